package org.tapeline.journal.quarkus.http;

import java.util.List;

/** A request that is refused, with a sentence that says what to do (RFC 9457). */
public final class Problem extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final String code;
  private final String title;
  private final transient List<FieldError> errors;

  /**
   * @param field the field, or the parameter, that is wrong
   */
  public record FieldError(String field, String message) {}

  public Problem(int status, String code, String title, String detail, List<FieldError> errors) {
    super(detail);
    this.status = status;
    this.code = code;
    this.title = title;
    this.errors = List.copyOf(errors);
  }

  public static Problem notFound(String detail) {
    return new Problem(404, "not-found", "Not found", detail, List.of());
  }

  public static Problem badRequest(String code, String detail, FieldError... errors) {
    return new Problem(400, code, "Not understood", detail, List.of(errors));
  }

  public static Problem forbidden(String detail) {
    return new Problem(403, "not-yours", "Not for you", detail, List.of());
  }

  /** Somebody else's field or team. */
  public static Problem otherField(String detail) {
    return new Problem(403, "other-field", "Not your field", detail, List.of());
  }

  public static Problem conflict(String code, String detail) {
    return new Problem(409, code, "Not possible now", detail, List.of());
  }

  public int status() {
    return status;
  }

  public String code() {
    return code;
  }

  public String title() {
    return title;
  }

  public List<FieldError> errors() {
    return errors == null ? List.of() : errors;
  }
}
