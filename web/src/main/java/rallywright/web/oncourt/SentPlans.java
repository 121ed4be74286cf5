package rallywright.web.oncourt;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import rallywright.engine.session.SessionId;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The plans as phones last got them: drawing one takes longer than everything else that a phone is
 * told, and all phones of a session ask for the same.
 */
final class SentPlans {

  private static final int MOST = 32;
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Map<SessionId, Marked> drawn =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<SessionId, Marked> eldest) {
          return size() > MOST;
        }
      };

  private record Marked(String mark, JsonNode plan) {}

  /** The plan of a session under a mark; drawn where it is not at hand. */
  synchronized JsonNode of(SessionId session, String mark, Supplier<Map<String, Object>> drawing) {
    Marked last = drawn.get(session);
    if (last == null || !last.mark().equals(mark)) {
      last = new Marked(mark, JSON.valueToTree(drawing.get()));
      drawn.put(session, last);
    }
    return last.plan();
  }
}
