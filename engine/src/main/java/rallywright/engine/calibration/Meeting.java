package rallywright.engine.calibration;

import rallywright.engine.skill.Clarity;
import rallywright.engine.skill.Contest;
import rallywright.engine.skill.Game;
import rallywright.engine.skill.Result;
import rallywright.engine.skill.Sides;

/**
 * A game before it is played.
 *
 * @param week the week, from 0
 * @param contest what is contested
 * @param sides who plays
 * @param clarity how much the weather lets its rallies tell
 */
record Meeting(int week, Contest contest, Sides sides, Clarity clarity) {
  Game with(Result result) {
    return new Game(week, contest, sides, result, clarity);
  }
}
