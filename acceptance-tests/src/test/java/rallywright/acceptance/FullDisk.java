package rallywright.acceptance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Takes the room for writing away from a running server, and gives it back.
 *
 * <p>With the rights for it the club lies on a small file system in memory that is filled to the
 * last byte: the real thing. Without, the kernel's limit on the size of files of the server's
 * process (RLIMIT_FSIZE) is lowered: its writes fail the same way with another word.
 */
final class FullDisk implements DiskTrouble {

  private static final int MEGABYTES = 24;

  private final Path folder;
  private final boolean real;

  private FullDisk(Path folder, boolean real) {
    this.folder = folder;
    this.real = real;
  }

  /** A folder on a file system of its own. */
  static FullDisk mounted(Path folder) {
    if (!run("mount", "-t", "tmpfs", "-o", "size=" + MEGABYTES + "m", "tmpfs", folder.toString())) {
      throw new IllegalStateException("A file system in memory needs the rights of root.");
    }
    return new FullDisk(folder, true);
  }

  /** A folder as it is; the server's process is limited. */
  static FullDisk limited(Path folder) {
    return new FullDisk(folder, false);
  }

  /** Whether this user may mount a file system. */
  static boolean mayMount(Path folder) {
    if (run("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", folder.toString())) {
      return run("umount", folder.toString());
    }
    return false;
  }

  @Override
  public String words() {
    return real
        ? "a file system of %d MB, filled to the last byte (ENOSPC)".formatted(MEGABYTES)
        : "a limit on the size of the server's files (RLIMIT_FSIZE, EFBIG)";
  }

  @Override
  public void begin(RunningCourt court) throws IOException {
    if (!real) {
      limit(court.program(), "1:");
      return;
    }
    try (var out = Files.newOutputStream(filler())) {
      byte[] zeros = new byte[4096];
      while (true) {
        out.write(zeros);
      }
    } catch (IOException full) {
      if (Files.size(filler()) == 0) {
        throw full;
      }
    }
  }

  @Override
  public void end(RunningCourt court) throws IOException {
    if (real) {
      Files.delete(filler());
    } else {
      limit(court.program(), "unlimited:");
    }
  }

  private Path filler() {
    return folder.resolve("filler");
  }

  private static void limit(StartedProgram program, String size) {
    if (!run("prlimit", "--pid", String.valueOf(program.pid()), "--fsize=" + size)) {
      throw new IllegalStateException("The limit of the server could not be changed.");
    }
  }

  /** Runs a command; answers whether it said that all went well. */
  static boolean run(String... command) {
    return code(command) == 0;
  }

  /** Runs a command; answers its code, or -1 where it is missing or does not end. */
  static int code(String... command) {
    try {
      Process process =
          new ProcessBuilder(List.copyOf(Arrays.asList(command)))
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(20, TimeUnit.SECONDS) ? process.exitValue() : -1;
    } catch (IOException missing) {
      return -1;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  @Override
  public void close() {
    if (real && !run("umount", "-l", folder.toString())) {
      System.out.println("The file system at " + folder + " is still mounted.");
    }
  }
}
