package rallywright.web.oncourt;

import java.util.ArrayList;
import java.util.List;

/**
 * What became of a phone's file.
 *
 * @param stored how many entries were new and are kept now
 * @param known how many had arrived before
 * @param refusals why others were not kept, one sentence each
 */
public record FileReceipt(int stored, int known, List<String> refusals) {

  static FileReceipt of(List<EventGate.Answer> answers) {
    List<String> refusals = new ArrayList<>();
    for (int place = 0; place < answers.size(); place++) {
      if (answers.get(place).outcome() == EventGate.Outcome.REFUSED) {
        refusals.add("Entry " + (place + 1) + ": " + answers.get(place).reason());
      }
    }
    return new FileReceipt(
        count(answers, EventGate.Outcome.STORED),
        count(answers, EventGate.Outcome.KNOWN),
        List.copyOf(refusals));
  }

  private static int count(List<EventGate.Answer> answers, EventGate.Outcome outcome) {
    return (int) answers.stream().filter(answer -> answer.outcome() == outcome).count();
  }

  /** What arrived, in a sentence. */
  public String words() {
    String fresh = stored == 1 ? "1 entry was stored" : stored + " entries were stored";
    return known == 0 ? fresh + "." : fresh + ", " + known + " had arrived before.";
  }
}
