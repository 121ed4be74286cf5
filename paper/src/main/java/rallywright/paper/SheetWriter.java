package rallywright.paper;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rallywright.engine.plan.SessionPlan;
import rallywright.engine.session.Session;
import rallywright.paper.press.QrPicture;
import rallywright.paper.sheet.BlockView;
import rallywright.paper.sheet.PhoneView;
import rallywright.paper.sheet.SheetView;

/** Puts a session into the words and pictures of the court sheet. */
final class SheetWriter {

  /** The usual cautions; no medical advice. */
  static final List<String> CAUTIONS =
      List.of(
          "A second ball on the court: call “ball”, stop, replay.",
          "Turn and run for a lob, never back-pedal.",
          "Stop at pain or dizziness. Drink, rest, find shade.",
          "Eye protection and court shoes are advised.",
          "Local rules and licensed professionals come first.");

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

  private SheetWriter() {}

  static SheetView write(SheetRequest request) {
    return write(request, Arrangement.USUAL);
  }

  static SheetView write(SheetRequest request, Arrangement arrangement) {
    Session session = request.session();
    SessionPlan plan = session.plan();
    FirstNames names = FirstNames.of(request.players());
    BlockClock clock = BlockClock.of(session);
    return new SheetView(
        PrintableText.of(session.name()),
        session.date().format(DAY)
            + ", "
            + clock.booked(plan.minutes())
            + " ("
            + plan.minutes()
            + " min)",
        plan.courts() == 1 ? "1 court" : plan.courts() + " courts",
        plan.present().stream().map(names::of).toList(),
        request.origin().sentence(),
        blocks(
            plan,
            new BlockWriter(request, names, arrangement.gamesInARow()),
            arrangement.mostRows()),
        phone(request.access()),
        ScoringWords.of(request).usual(),
        CAUTIONS);
  }

  private static List<BlockView> blocks(SessionPlan plan, BlockWriter writer, int mostRows) {
    List<BlockView> blocks = new ArrayList<>();
    for (BlockGroup group : BlockGroup.of(plan.blocks())) {
      BlockView view = writer.write(group, "block-" + (group.first() + 1));
      blocks.addAll(view.inPartsOf(mostRows));
    }
    return blocks;
  }

  private static PhoneView phone(PhoneAccess access) {
    if (access instanceof PhoneAccess.Open open) {
      return new PhoneView(
          Optional.of(QrPicture.of(open.address())), "Score on a phone: point its camera here.");
    }
    return new PhoneView(
        Optional.empty(), PrintableText.of(((PhoneAccess.Closed) access).reason()));
  }
}
