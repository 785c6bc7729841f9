package commonsheet.check;

import commonsheet.record.Severity;

/** A rule with its id, severity and source. */
abstract class NamedRule implements CheckRule {
  private final String id;
  private final Severity severity;
  private final String source;

  NamedRule(String id, Severity severity, String source) {
    this.id = id;
    this.severity = severity;
    this.source = source;
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final Severity severity() {
    return severity;
  }

  @Override
  public final String source() {
    return source;
  }
}
