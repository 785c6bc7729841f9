// Reads JSON-LD 1.1 with the npm package jsonld, for comparison with what the project means to say.
//
// usage: node jsonld.mjs FILE...
//
// Prints one line of JSON per file, in the given order:
//   {"file": "...", "valid": true, "error": null, "quads": ["<s> <p> <o> .", ...]}
// A member that the context does not define, and that a reader would drop without a word, is an error
// ("safe mode"); so is a context that would have to be fetched.
// Exit status: 0 all valid, 1 some invalid, 2 wrong usage.

import {readFileSync} from "node:fs";
import jsonld from "jsonld";

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error("usage: node jsonld.mjs FILE...");
  process.exit(2);
}

const documentLoader = async (url) => {
  throw new Error(`needs ${url} from the network`);
};

for (const file of files) {
  const result = {file, valid: true, error: null, quads: []};
  try {
    const document = JSON.parse(readFileSync(file, "utf8"));
    const quads = await jsonld.toRDF(document, {format: "application/n-quads", safe: true, documentLoader});
    result.quads = quads.trimEnd().split("\n");
  } catch (error) {
    result.valid = false;
    result.error = `${error.message} ${JSON.stringify(error.details ?? {})}`;
    process.exitCode = 1;
  }
  console.log(JSON.stringify(result));
}
