package rallywright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.store.ClubStore;

/** Copies the club into one new file, also while it is in use. */
@Command(
    name = "backup",
    description = "Copies the club into one new file, also while it is in use.",
    mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "The new file; it must not be there yet.")
  private Path file = Path.of("");

  @Mixin private DataFolder data = new DataFolder();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    NewFile.check(file);
    try (ClubStore store = data.openExisting()) {
      store.backup(file);
    }
    long kilobytes = (file.toFile().length() + 1023) / 1024;
    spec.commandLine()
        .getOut()
        .println(
            "Backup written: "
                + file
                + " ("
                + kilobytes
                + " kB). Keep it away from this computer.");
    return 0;
  }
}
