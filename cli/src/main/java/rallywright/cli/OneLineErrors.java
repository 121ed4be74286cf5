package rallywright.cli;

import java.util.Locale;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Says in one line on standard error what went wrong. */
final class OneLineErrors {

  private OneLineErrors() {}

  static int wrongArguments(ParameterException problem, String[] arguments) {
    CommandLine command = problem.getCommandLine();
    command
        .getErr()
        .println(
            oneLine(problem)
                + " Maybe: "
                + command.getCommandSpec().qualifiedName()
                + " --help shows what is allowed.");
    return ExitCode.USAGE;
  }

  static int failed(Exception problem, CommandLine command, ParseResult arguments) {
    command.getErr().println(oneLine(problem));
    boolean wrongInput =
        problem instanceof WrongInput || problem instanceof IllegalArgumentException;
    return wrongInput ? ExitCode.USAGE : ExitCode.SOFTWARE;
  }

  private static String oneLine(Exception problem) {
    String message =
        Objects.requireNonNullElse(
            problem.getMessage(), problem.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    String line = message.replaceAll("\\s*\\R\\s*", " ").strip();
    return line.endsWith(".") || line.endsWith("!") ? line : line + ".";
  }
}
