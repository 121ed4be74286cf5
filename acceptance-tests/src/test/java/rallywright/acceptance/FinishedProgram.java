package rallywright.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A command that ran to its end in a process of its own.
 *
 * @param code the exit code
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record FinishedProgram(int code, String out, String err) {

  /** Runs a command with a text on its standard input. */
  static FinishedProgram run(List<String> arguments, String input) {
    try {
      Path out = Files.createTempFile("rallywright", "out");
      Path err = Files.createTempFile("rallywright", "err");
      Process process =
          new ProcessBuilder(StartedProgram.line(arguments))
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      try (var in = process.getOutputStream()) {
        in.write(input.getBytes(StandardCharsets.UTF_8));
      }
      int code = process.waitFor();
      FinishedProgram finished =
          new FinishedProgram(code, Files.readString(out), Files.readString(err));
      Files.delete(out);
      Files.delete(err);
      return finished;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }
}
