// Reads data packages with the npm packages datapackage and tableschema, for comparison with what the
// project means to say.
//
// usage: node datapackage.mjs DATAPACKAGE.JSON...
//
// Checks the descriptor against its profile, the schema of every table, every row against types and
// constraints, primary keys and foreign keys. Prints one line of JSON per file, in the given order:
//   {"file": "...", "valid": true, "errors": [], "rows": {"cells": 3, ...}}
// Exit status: 0 all valid, 1 some invalid, 2 wrong usage.

import {dirname} from "node:path";
import {readFileSync} from "node:fs";
import datapackage from "datapackage";
import tableschema from "tableschema";

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error("usage: node datapackage.mjs DATAPACKAGE.JSON...");
  process.exit(2);
}

const told = (error) =>
  error.errors?.length > 0 ? error.errors.flatMap(told) : [String(error.message ?? error)];

const check = async (file) => {
  const errors = [];
  const rows = {};
  const descriptor = JSON.parse(readFileSync(file, "utf8"));
  const whole = await datapackage.Package.load(descriptor, {basePath: dirname(file)});
  errors.push(...whole.errors.flatMap(told));
  for (const resource of whole.resources) {
    errors.push(...resource.errors.flatMap(told));
    if (!resource.tabular) {
      await resource.rawRead();
      continue;
    }
    const schema = await tableschema.Schema.load(resource.descriptor.schema);
    errors.push(...schema.errors.flatMap(told));
    try {
      rows[resource.name] = (await resource.read({keyed: true, relations: true})).length;
      await resource.checkRelations();
    } catch (error) {
      errors.push(...told(error).map((message) => `${resource.name}: ${message}`));
    }
  }
  return {errors, rows};
};

for (const file of files) {
  const {errors, rows} = await check(file).catch((error) => ({errors: told(error), rows: {}}));
  console.log(JSON.stringify({file, valid: errors.length === 0, errors, rows}));
  if (errors.length > 0) {
    process.exitCode = 1;
  }
}
