// Validates cell records with ajv, for comparison with the project's own validator.
//
// usage: node validate.mjs SCHEMA RECORD...
//
// Prints one line of JSON per record, in the given order:
//   {"file": "...", "valid": false, "errors": ["/statements/0 must have required property 'evidence'"]}
// Exit status: 0 all valid, 1 some invalid, 2 wrong usage or an unusable schema.

import {readFileSync} from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";

const [schemaFile, ...recordFiles] = process.argv.slice(2);
if (!schemaFile || recordFiles.length === 0) {
  console.error("usage: node validate.mjs SCHEMA RECORD...");
  process.exit(2);
}

// strictRequired would demand each conditional "required" to repeat the properties it names.
const ajv = new Ajv2020({strict: true, strictRequired: false, strictTypes: false, allErrors: true});
ajv.addVocabulary(["x-unit"]);

let validate;
try {
  validate = ajv.compile(JSON.parse(readFileSync(schemaFile, "utf8")));
} catch (error) {
  console.error(`${schemaFile} is not usable as a JSON Schema: ${error.message}`);
  process.exit(2);
}

const problemsOf = (file) => {
  let record;
  try {
    record = JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    return [`not readable as JSON: ${error.message}`];
  }
  return validate(record) ? [] : validate.errors.map((e) => `${e.instancePath || "/"} ${e.message}`);
};

for (const file of recordFiles) {
  const errors = problemsOf(file);
  console.log(JSON.stringify({file, valid: errors.length === 0, errors}));
  if (errors.length > 0) {
    process.exitCode = 1;
  }
}
