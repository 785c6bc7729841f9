package commonsheet.compare;

import java.util.List;

/**
 * Voltage by current and charge given: a look-up grid for sizing tools. Valid between its lowest
 * and highest current only; a place past the end of a discharge has no value.
 *
 * @param currents in A, ascending
 * @param charges given, in A.h, ascending from 0
 * @param voltages in V, one row per current and one column per charge; null past the cut-off
 * @param uncertainty half-width of the voltages, in V
 * @param cutoffVoltage in V
 * @param temperature of the discharges, their mean, in °C; null where a chart does not say
 * @param from ids of the curves it comes from
 * @param unsure whether one of them is in doubt
 */
public record VoltageTable(
    List<Double> currents,
    List<Double> charges,
    List<List<Double>> voltages,
    double uncertainty,
    double cutoffVoltage,
    Double temperature,
    List<String> from,
    boolean unsure) {}
