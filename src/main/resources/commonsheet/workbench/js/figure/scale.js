// The scale of an axis through its marks, as the program computes it when the work is saved
// (chart.reference): least squares of places over values, or a plane where the chart is turned.

/** Whether marks are known in both directions, as on a chart that is turned or skewed. */
export const isTurned = (ticks) => ticks.length > 0 && ticks.every((tick) => tick.across != null);

const mean = (numbers) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

const placeOf = (along, tick) =>
  along === 'x' ? [tick.at, tick.across ?? 0] : [tick.across ?? 0, tick.at];

/**
 * The scale of an axis.
 *
 * @param {{along: 'x'|'y', scale: ?string, ticks: object[]}} axis
 * @returns {object|{fault: string}} what the marks make, or why they make nothing
 */
export function scaleOf(axis) {
  if (axis.scale) {
    return fitted(axis, axis.scale === 'logarithmic');
  }
  const straight = fitted(axis, false);
  const values = new Set(axis.ticks.map((tick) => tick.value));
  if (straight.fault || values.size < 3 || isTurned(axis.ticks) || axis.ticks.some((tick) => tick.value <= 0)) {
    return straight;
  }
  const bent = fitted(axis, true);
  return !bent.fault && bent.error < straight.error ? bent : straight;
}

function faultOf({ along, ticks }, logarithmic) {
  if (ticks.some((tick) => !Number.isFinite(tick.value))) {
    return 'A mark has no value yet.';
  }
  if (ticks.length < 2) {
    return ticks.length ? 'One more mark makes a scale.' : `Give the ${along} axis two marks.`;
  }
  if (ticks.every((tick) => tick.value === ticks[0].value)) {
    return 'Give two marks of different value.';
  }
  if (logarithmic && ticks.some((tick) => tick.value <= 0)) {
    return 'A logarithmic axis has only values above 0.';
  }
  if (!isTurned(ticks) && ticks.every((tick) => tick.at === ticks[0].at)) {
    return 'Both marks stand at one place.';
  }
  return isTurned(ticks) && ticks.length < 3 ? 'A turned chart takes three marks.' : null;
}

function fitted(axis, logarithmic) {
  const fault = faultOf(axis, logarithmic);
  if (fault) {
    return { fault };
  }
  const scaled = (value) => (logarithmic ? Math.log10(Math.max(value, Number.MIN_VALUE)) : value);
  const places = axis.ticks.map((tick) => placeOf(axis.along, tick));
  const values = axis.ticks.map((tick) => scaled(tick.value));
  const turned = isTurned(axis.ticks);
  const plane = turned ? turnedPlane(places, values) : uprightPlane(axis.along, places, values);
  const steep = Math.hypot(plane.across, plane.down);
  if (!(steep > 0) || !Number.isFinite(steep)) {
    return { fault: turned ? 'The marks lie on one line; put one off it.' : 'The marks contradict each other.' };
  }
  const at = ([x, y]) => plane.offset + plane.across * x + plane.down * y;
  const value = (place) => (logarithmic ? 10 ** at(place) : at(place));
  const perPoint = (place) => (logarithmic ? value(place) * Math.LN10 * steep : steep);
  return {
    logarithmic,
    plane,
    scaled,
    value,
    perPoint,
    error: errorOf(places, values, at, steep, turned, axis.along),
    residual: (tick) => value(placeOf(axis.along, tick)) - tick.value,
    /** How far a mark lies from the scale, in points of the page. */
    off: (tick) => Math.abs(at(placeOf(axis.along, tick)) - scaled(tick.value)) / steep,
  };
}

function uprightPlane(along, places, values) {
  const places1 = places.map((place) => place[along === 'x' ? 0 : 1]);
  const middle = mean(places1);
  const middleValue = mean(values);
  let squares = 0;
  let products = 0;
  values.forEach((value, i) => {
    squares += (value - middleValue) ** 2;
    products += (value - middleValue) * (places1[i] - middle);
  });
  const slope = squares / products;
  const offset = middleValue - slope * middle;
  return along === 'x' ? { offset, across: slope, down: 0 } : { offset, across: 0, down: slope };
}

function turnedPlane(places, values) {
  const mx = mean(places.map((place) => place[0]));
  const my = mean(places.map((place) => place[1]));
  const mv = mean(values);
  let xx = 0, xy = 0, yy = 0, xv = 0, yv = 0;
  places.forEach(([px, py], i) => {
    const x = px - mx;
    const y = py - my;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xv += x * (values[i] - mv);
    yv += y * (values[i] - mv);
  });
  const determinant = xx * yy - xy * xy;
  if (determinant <= 1e-6 * xx * yy) {
    return { offset: NaN, across: NaN, down: NaN };
  }
  const across = (xv * yy - yv * xy) / determinant;
  const down = (yv * xx - xv * xy) / determinant;
  return { offset: mv - across * mx - down * my, across, down };
}

/** Twice the standard error of the scale at its outer marks, in points; 0 where no mark is left over. */
function errorOf(places, values, at, steep, turned, along) {
  const free = values.length - (turned ? 3 : 2);
  if (free < 1) {
    return 0;
  }
  const middle = [mean(places.map((place) => place[0])), mean(places.map((place) => place[1]))];
  const axis = along === 'x' ? 0 : 1;
  let sum = 0, spread = 0, reach = 0;
  places.forEach((place, i) => {
    sum += ((values[i] - at(place)) / steep) ** 2;
    const distance = turned
      ? Math.hypot(place[0] - middle[0], place[1] - middle[1])
      : Math.abs(place[axis] - middle[axis]);
    spread += distance ** 2;
    reach = Math.max(reach, distance);
  });
  return 2 * Math.sqrt(sum / free) * Math.sqrt(1 / values.length + reach ** 2 / Math.max(1e-12, spread));
}
