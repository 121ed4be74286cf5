package rallywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;

/** The target of a command that writes a file. */
final class NewFile {

  private NewFile() {}

  static void check(Path file) {
    if (Files.exists(file)) {
      throw new WrongInput(
          "The file "
              + file
              + " is there already and is not overwritten. Choose another name, for example with"
              + " the date in it.");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new WrongInput(
          "The folder " + folder + " does not exist. Make it first, or choose another.");
    }
  }
}
