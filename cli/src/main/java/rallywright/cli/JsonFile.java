package rallywright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Opens a JSON file; what cannot be opened is answered in one line. */
final class JsonFile {

  private JsonFile() {}

  /** The whole file as one place. */
  static JsonField root(Path file) {
    return JsonField.root(parse(file));
  }

  private static JsonNode parse(Path file) {
    if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
      throw new WrongInput(
          "There is no file %s that can be read; a JSON file is needed. Maybe the path is wrong."
              .formatted(file));
    }
    try {
      @Nullable JsonNode root = JsonMapper.builder().build().readTree(file.toFile());
      if (root == null || root.isMissingNode()) {
        throw new WrongInput(
            "%s is empty; it must be an object { … }. Maybe it was not saved.".formatted(file));
      }
      return root;
    } catch (JacksonException problem) {
      throw new WrongInput(
          "%s is not JSON: %s at line %d, column %d. Maybe a comma or a bracket is missing."
              .formatted(
                  file,
                  problem.getOriginalMessage(),
                  problem.getLocation().getLineNr(),
                  problem.getLocation().getColumnNr()));
    }
  }
}
