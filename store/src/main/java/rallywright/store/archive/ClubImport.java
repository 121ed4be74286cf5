package rallywright.store.archive;

import java.nio.file.Path;
import java.util.List;
import rallywright.store.ClubStore;
import rallywright.store.StoreProblem;

/** Reads an export of {@link ClubExport} back into a club, all of it or nothing. */
public final class ClubImport {

  private ClubImport() {}

  /**
   * Takes an export into a club. Everything is checked first; every line that is wrong is listed.
   *
   * @param archive the export
   * @param store the club
   * @param into what the import may meet there
   * @return what became of it; nothing is stored unless it is {@link ImportResult.Done}
   */
  public static ImportResult read(Path archive, ClubStore store, ImportInto into) {
    ArchiveReading.Read read = ArchiveReading.of(archive);
    if (!read.problems().isEmpty()) {
      return new ImportResult.Refused(read.problems());
    }
    try {
      return store.inOneStep(
          () -> {
            if (into == ImportInto.EMPTY_CLUB && !store.isEmpty()) {
              throw new StoreProblem(
                  "The club already holds players or sessions, and an import goes into an empty"
                      + " one. Choose an empty folder with --data, or ask for a merge by id with"
                      + " --merge.");
            }
            store.take(read.contents());
            return new ImportResult.Done(
                read.contents().players().size(),
                read.contents().sessions().size(),
                read.contents().events().size());
          });
    } catch (StoreProblem problem) {
      String name = String.valueOf(archive.getFileName());
      return new ImportResult.Refused(
          List.of(new ImportProblem(name, 0, "", String.valueOf(problem.getMessage()))));
    }
  }
}
