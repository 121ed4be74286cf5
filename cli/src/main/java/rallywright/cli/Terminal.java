package rallywright.cli;

import java.io.Console;
import org.jspecify.annotations.Nullable;

/** Whether somebody sits in front of this program. */
final class Terminal {

  private Terminal() {}

  /** The terminal, or null where the program is part of a script. */
  @SuppressWarnings("SystemConsoleNull")
  static @Nullable Console console() {
    Console console = System.console();
    if (console == null) {
      return null;
    }
    try {
      // From Java 22 on there is a console without a terminal too.
      Object answer = Console.class.getMethod("isTerminal").invoke(console);
      return Boolean.FALSE.equals(answer) ? null : console;
    } catch (ReflectiveOperationException before22) {
      return console;
    }
  }
}
