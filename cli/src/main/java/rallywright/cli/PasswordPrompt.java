package rallywright.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Asks for a new password: twice and unseen at a console, else one line of standard input. */
final class PasswordPrompt {

  private PasswordPrompt() {}

  static String ask() {
    Console console = Terminal.console();
    if (console == null) {
      return fromStandardInput();
    }
    char[] first = read(console, "New password: ");
    char[] second = read(console, "Once more: ");
    if (!Arrays.equals(first, second)) {
      throw new WrongInput("The two passwords differ, so nothing was set. Try again.");
    }
    return new String(first);
  }

  private static char[] read(Console console, String prompt) {
    char @Nullable [] typed = console.readPassword("%s", prompt);
    if (typed == null) {
      throw new WrongInput("No password was typed, so nothing was set. Try again.");
    }
    return typed;
  }

  private static String fromStandardInput() {
    try {
      BufferedReader in =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      String line = in.readLine();
      if (line == null || line.isEmpty()) {
        throw new WrongInput(
            "No password came on standard input, so nothing was set. Maybe run it in a terminal,"
                + " which asks for it.");
      }
      return line;
    } catch (IOException unreadable) {
      throw new WrongInput("Standard input could not be read: " + unreadable.getMessage());
    }
  }
}
