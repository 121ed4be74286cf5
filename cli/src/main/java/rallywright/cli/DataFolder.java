package rallywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import rallywright.store.ClubStore;
import rallywright.store.StoreAddress;

/** The option that says where the club is kept. */
final class DataFolder {

  @Option(
      names = "--data",
      paramLabel = "DIR",
      defaultValue = "${sys:user.home}/rallywright",
      description = "Folder that holds the club's one file. Default: ${DEFAULT-VALUE}.")
  private Path data = Path.of("rallywright");

  /** Opens the club, made where it is missing. */
  ClubStore open() {
    return ClubStore.open(StoreAddress.file(data));
  }

  /** Opens a club that must be there already, so that a mistyped folder makes no empty club. */
  ClubStore openExisting() {
    if (!Files.isRegularFile(data.resolve(StoreAddress.FILE_NAME))) {
      throw new WrongInput(
          "The folder "
              + data
              + " holds no club ("
              + StoreAddress.FILE_NAME
              + "). Choose the folder with --data.");
    }
    return open();
  }
}
