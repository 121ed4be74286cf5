package rallywright.acceptance;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program in a process of its own, started as a coach starts it. */
final class StartedProgram implements AutoCloseable {

  private static final Pattern ADDRESS =
      Pattern.compile("(https?://[0-9.:]+)/sign-in#key=([A-Za-z0-9_-]+)");

  private final Process process;
  private final String address;
  private final String key;

  private StartedProgram(Process process, String address, String key) {
    this.process = process;
    this.address = address;
    this.key = key;
  }

  /** Starts {@code serve} on a free port with its data in a folder. */
  static StartedProgram serve(Path data) {
    return start("serve", data, 0, List.of());
  }

  /** Starts {@code serve} on a free port with more options. */
  static StartedProgram serve(Path data, List<String> options) {
    return start("serve", data, 0, options);
  }

  /** Starts {@code serve} on a given port, as after a power cut. */
  static StartedProgram serve(Path data, int port) {
    return start("serve", data, port, List.of());
  }

  /** Starts {@code serve} as the start script does for an evening: compiled fully in time. */
  static StartedProgram serveForLong(Path data) {
    List<String> line = line(List.of("serve", "--port", "0", "--data", data.toString()));
    line.set(1, "-XX:+UseSerialGC");
    return started(line);
  }

  /** Starts {@code demo} on a free port with its data in a folder. */
  static StartedProgram demo(Path data) {
    return start("demo", data, 0, List.of());
  }

  private static StartedProgram start(String command, Path data, int port, List<String> options) {
    List<String> arguments = new ArrayList<>();
    arguments.addAll(List.of(command, "--port", String.valueOf(port), "--data", data.toString()));
    arguments.addAll(options);
    return started(line(arguments));
  }

  private static StartedProgram started(List<String> line) {
    try {
      return waitForAddress(new ProcessBuilder(line).redirectErrorStream(true).start());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** What starts the program with these arguments. */
  static List<String> line(List<String> arguments) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.add("-XX:TieredStopAtLevel=1");
    line.add("-Drallywright.work-ahead=none");
    String archive = System.getProperty("program.archive", "");
    line.add(archive.isEmpty() ? "-Xshare:auto" : "-XX:SharedArchiveFile=" + archive);
    String program = System.getProperty("program.classpath", "");
    line.add("-cp");
    line.add(program.isEmpty() ? System.getProperty("java.class.path") : program);
    line.add("rallywright.cli.Rallywright");
    line.addAll(arguments);
    return line;
  }

  private static StartedProgram waitForAddress(Process process) throws IOException {
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    StringBuilder seen = new StringBuilder();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      seen.append(line).append('\n');
      Matcher found = ADDRESS.matcher(line);
      if (found.find()) {
        Thread drain = new Thread(() -> out.lines().forEach(System.out::println), "server output");
        drain.setDaemon(true);
        drain.start();
        return new StartedProgram(process, found.group(1), found.group(2));
      }
    }
    throw new IllegalStateException("The program ended before it was ready:\n" + seen);
  }

  /** The address without a key, for example http://127.0.0.1:40123. */
  String address() {
    return address;
  }

  /** The address that signs the coach in; works once. */
  String signInAddress() {
    return address + "/sign-in#key=" + key;
  }

  /** The number after the colon. */
  int port() {
    return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
  }

  /** The number of the process. */
  long pid() {
    return process.pid();
  }

  /** Ends the process at once, as a power cut does. */
  void killAtOnce() throws InterruptedException {
    process.destroyForcibly().waitFor();
  }

  @Override
  public void close() {
    process.destroy();
    try {
      process.waitFor();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
