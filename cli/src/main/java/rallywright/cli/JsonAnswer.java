package rallywright.cli;

import java.io.PrintWriter;
import tools.jackson.databind.json.JsonMapper;

/** Prints an answer as one JSON object with unrounded numbers. */
final class JsonAnswer {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private JsonAnswer() {}

  static void print(PrintWriter out, Object answer) {
    out.println(MAPPER.writeValueAsString(answer));
    out.flush();
  }
}
