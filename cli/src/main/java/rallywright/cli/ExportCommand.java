package rallywright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.store.ClubStore;
import rallywright.store.archive.ClubExport;

/** Writes everything that the club holds as JSON and as tables. */
@Command(
    name = "export",
    description = "Writes everything the club holds into a ZIP file: JSON and tables (CSV).",
    mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "The new ZIP file; it must not be there yet.")
  private Path file = Path.of("");

  @Mixin private DataFolder data = new DataFolder();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    NewFile.check(file);
    try (ClubStore store = data.openExisting()) {
      ClubExport.write(store, file);
    }
    spec.commandLine()
        .getOut()
        .println("Export written: " + file + ". It holds people's data: keep it safe.");
    return 0;
  }
}
