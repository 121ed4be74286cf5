package rallywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rallywright.store.ClubStore;
import rallywright.store.archive.ClubImport;
import rallywright.store.archive.ImportInto;
import rallywright.store.archive.ImportResult;

/** Reads an export back; stores nothing unless every line is right. */
@Command(
    name = "import",
    description = "Reads an export back. Nothing is stored unless every line is right.",
    mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "A ZIP file written by export.")
  private Path file = Path.of("");

  @Option(
      names = "--merge",
      description =
          "Import into a club that is not empty: what has the same id is replaced, everything else"
              + " is added.")
  private boolean merge;

  @Mixin private DataFolder data = new DataFolder();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    if (!Files.isRegularFile(file)) {
      throw new WrongInput(
          "There is no file " + file + ". An export is a ZIP file written by rallywright export.");
    }
    try (ClubStore store = data.open()) {
      ImportInto into = merge ? ImportInto.MERGED_BY_ID : ImportInto.EMPTY_CLUB;
      return answer(ClubImport.read(file, store, into));
    }
  }

  private int answer(ImportResult result) {
    if (result instanceof ImportResult.Done done) {
      spec.commandLine()
          .getOut()
          .println(
              "Imported: "
                  + done.players()
                  + " players, "
                  + done.sessions()
                  + " sessions, "
                  + done.events()
                  + " events of the court.");
      return ExitCode.OK;
    }
    var err = spec.commandLine().getErr();
    var problems = ((ImportResult.Refused) result).problems();
    problems.forEach(err::println);
    err.println(
        "Nothing was stored: "
            + (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
            + " to be put right first.");
    return ExitCode.USAGE;
  }
}
