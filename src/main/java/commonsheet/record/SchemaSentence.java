package commonsheet.record;

import com.networknt.schema.Error;

/** Says in a sentence what a failed keyword of the schema means for the record. */
final class SchemaSentence {
  private SchemaSentence() {}

  static String of(Error error) {
    return error.getInstanceLocation() + ": " + error.getKeyword() + " | " + error.getMessage() + " | prop=" + error.getProperty()+" | args="+java.util.Arrays.toString(error.getArguments())+" | schema="+error.getSchemaNode()+" | ev="+error.getEvaluationPath();
  }
}
