package rallywright.engine.skill;

import java.util.List;

/** Checks that evidence speaks only of players, skills and effects that the club has. */
final class EvidenceCheck {
  private final Club club;

  private EvidenceCheck(Club club) {
    this.club = club;
  }

  static void check(Club club, List<? extends Evidence> evidence) {
    EvidenceCheck check = new EvidenceCheck(club);
    for (Evidence piece : evidence) {
      if (piece instanceof Game game) {
        check.game(game);
      } else if (piece instanceof YardstickResult result) {
        check.player(result.test().player(), result.week());
        number("skill", result.test().skill(), club.skills().skills());
        number("effect", result.test().difficulty(), club.effects().size());
      } else if (piece instanceof Practice practice) {
        check.practice(practice);
      }
    }
  }

  private void practice(Practice practice) {
    player(practice.player(), practice.week());
    number("gain", practice.gain(), club.gains().size());
    if (practice.load().skills() != club.skills().skills()) {
      throw new IllegalArgumentException(
          "The load names "
              + practice.load().skills()
              + " skills; the club has "
              + club.skills().skills()
              + ". Maybe a share of 0 was left out.");
    }
  }

  private void game(Game game) {
    for (int player : game.sides().a()) {
      player(player, game.week());
    }
    for (int player : game.sides().b()) {
      player(player, game.week());
    }
    for (int effect : game.contest().effects()) {
      number("effect", effect, club.effects().size());
    }
    if (game.contest().first().skills() != club.skills().skills()) {
      throw new IllegalArgumentException(
          "The contest weighs "
              + game.contest().first().skills()
              + " skills; the club has "
              + club.skills().skills()
              + ". Maybe a weight of 0 was left out.");
    }
  }

  private void player(int player, int week) {
    number("player", player, club.entrants().size());
    int first = club.entrants().get(player).firstWeek();
    if (week < first) {
      throw new IllegalArgumentException(
          "Week "
              + week
              + " lies before the first week ("
              + first
              + ") of player "
              + player
              + ". Maybe the player joined earlier.");
    }
  }

  private static void number(String what, int number, int count) {
    if (number < 0 || number >= count) {
      throw new IllegalArgumentException(
          "The "
              + what
              + " ("
              + number
              + ") must lie from 0 to "
              + (count - 1)
              + ". Numbers count from 0.");
    }
  }
}
