package rallywright.store.json;

/** A JSON text does not say what it should; the message says what was seen and what is allowed. */
public final class WrongJson extends IllegalArgumentException {

  private final String field;

  /**
   * A wrong text.
   *
   * @param field the field that is wrong, for example {@code blocks[2].kind}; empty for the whole
   * @param message what was seen and what is allowed
   */
  public WrongJson(String field, String message) {
    super(message);
    this.field = field;
  }

  /**
   * The field that is wrong.
   *
   * @return its path, or an empty text where the whole is wrong
   */
  public String field() {
    return field;
  }
}
