package rallywright.cli;

/**
 * The input of a command is wrong; the message says what was seen, what is allowed, what to try.
 */
public final class WrongInput extends RuntimeException {

  /**
   * Wrong input.
   *
   * @param message one line for the person who typed the command
   */
  public WrongInput(String message) {
    super(message);
  }
}
