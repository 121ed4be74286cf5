package rallywright.web.progress;

import java.util.Locale;

/** How the numbers of a page are found: the same words in place and on the method page. */
public enum Method {
  /** Where a skill stands. */
  SKILL(
      "Skills",
      "How many of ten rallies that turn on a skill a player would win against this club's"
          + " average player. The bar and the band hold the truth four times in five.",
      "Every rally is a contest between the two sides' skills, weighed by what the drill"
          + " and the role ask for; the advantage of the role, the head start and the"
          + " opponent are allowed for. All scores of all weeks are read together, so that"
          + " today's also sharpen what is known of last month.",
      "Games compare players: if everybody improves alike, only yardsticks can show it. A"
          + " score says how a game went, not why."),
  /** How a skill changed between two days. */
  CHANGE(
      "Change between two dates",
      "By how much a skill is thought to have risen, with the chance that it rose at all.",
      "The two weeks are compared within one reading of all scores, so what both weeks have"
          + " in common (the level, the same opponents) drops out. Every week can be asked"
          + " for; the scores before and after it speak for a week without scores. More or"
          + " fewer rallies in 100 are counted against a player who stands between the two"
          + " weeks.",
      "Not why it changed: practice, a new paddle, a cold. Below a chance of 8 in 10 no"
          + " change is claimed. Of ten changes named with a chance of 8 in 10, about two are"
          + " none."),
  /** Where points are lost. */
  BREAKDOWN(
      "Where points are lost",
      "The share of lost rallies that ended in one stage, or with one stroke, beside the"
          + " share that skills and club lead one to expect.",
      "Every rally whose end was noted is compared with the chain of a point (serve,"
          + " return, third shot, the way to the line, the exchange at the line) for the"
          + " players who were on court. Many stages and strokes are looked at together, and"
          + " some will stand out by chance alone: only what survives a check for that"
          + " (Benjamini and Hochberg; of the breakdowns named, at most one in ten is chance)"
          + " is called a breakdown.",
      "An end says where a rally was lost, not why. Ends must be noted without choosing:"
          + " whoever notes only the ugly ones sees ugly ones. In doubles an end is the"
          + " pair's. With fewer than 10 lost rallies noted nothing is said."),
  /** What a skill is worth. */
  WORTH(
      "What each skill is worth",
      "How many more doubles games in 100 a player would win, to 11 against an even side,"
          + " if this skill were a small step better (0.2 on the scale of the model: 55 of"
          + " 100 rallies in place of 50) and all else stayed.",
      "The chain of a point says how a better skill moves the rallies won on serve and on"
          + " return; the exact rules of side-out scoring turn that into games. An hour is"
          + " four times 15 minutes at the club's usual gain.",
      "Which skill weighs how much in which stage is an assumption of this project, moved"
          + " only a little by the ends that are noted. The gain of an hour is uncertain for"
          + " everybody: see the club's page of drills."),
  /** With whom points are won. */
  PARTNERS(
      "Partners",
      "The chance of a doubles game to 11 with each partner, against two average players of"
          + " this club or against two that you choose, and whether the two bring more together"
          + " than each alone would lead one to expect.",
      "Skills of both partners through the stages of the point, both possible sides of the"
          + " court, and the official serving order. The interval holds what is not known of"
          + " the skills.",
      "It knows skills, not friendships, calling, covering or moving together. Few clubs"
          + " note enough doubles to check it."),
  /** What to practise next. */
  NEXT(
      "What to practise next",
      "Which skills pay most for this player's next hour.",
      "Each skill is weighed by how much winning in doubles hangs on it (its worth, through"
          + " the stages of the point), by the room to improve beside the player's other"
          + " skills and level, by what the last weeks have not yet filled (half of a"
          + " practice fades in about four weeks), and by how little is known of it. Drills"
          + " that ask for the skill most, and that seem to bring most here, come first.",
      "It is a ranking, not a forecast: it does not promise that an hour brings so much."
          + " Limits and wishes of the player are for the coach to weigh."),
  /** What was to be expected of a game. */
  EXPECTED(
      "Expected scores",
      "What all scores until today say of a game in that week, role, opponent and head"
          + " start included.",
      "From the skills of both sides and what is not known of them, the chance of every"
          + " final score is worked out exactly. Four games in five fall into \"as"
          + " expected\".",
      "The game itself is among the scores that are read, so the expectation leans a little"
          + " toward it. One game far from it is news, not a fault.");

  private final String title;
  private final String what;
  private final String how;
  private final String limits;

  Method(String title, String what, String how, String limits) {
    this.title = title;
    this.what = what;
    this.how = how;
    this.limits = limits;
  }

  /** The heading. */
  public String title() {
    return title;
  }

  /** What the number is. */
  public String what() {
    return what;
  }

  /** How it is computed. */
  public String how() {
    return how;
  }

  /** What it cannot say. */
  public String limits() {
    return limits;
  }

  /** Where it stands on the method page. */
  public String anchor() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
