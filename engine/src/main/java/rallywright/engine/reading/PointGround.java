package rallywright.engine.reading;

import java.util.List;
import java.util.Map;
import rallywright.engine.club.Player;
import rallywright.engine.club.PlayerId;
import rallywright.engine.drill.Skill;
import rallywright.engine.skill.Estimate;
import rallywright.engine.skill.Posterior;
import rallywright.engine.skill.SkillGroups;
import rallywright.engine.skill.SkillSum;

/** The club's estimates as the reading of points needs them. */
record PointGround(
    ClubHistory history, Gathering gathering, Posterior posterior, Map<Skill, Double> references)
    implements PointReading.Ground {

  @Override
  public List<Player> players() {
    return history.players();
  }

  @Override
  public List<PlayedGame> games() {
    return gathering.games();
  }

  @Override
  public Estimate skill(PlayerId player, Skill skill, PlayedGame played) {
    return posterior.skill(key(player, skill, gathering.weeks().of(played.date())));
  }

  @Override
  public Estimate today(PlayerId player, Skill skill) {
    return posterior.skill(key(player, skill));
  }

  @Override
  public SkillSum.Key key(PlayerId player, Skill skill) {
    return key(player, skill, gathering.thisWeek());
  }

  private SkillSum.Key key(PlayerId player, Skill skill, int week) {
    Integer number = gathering.numbers().get(player);
    if (number == null) {
      throw new IllegalArgumentException("Nothing is known of the player " + player + ".");
    }
    return new SkillSum.Key(number, SkillGroups.numberOf(skill), week);
  }

  @Override
  public Estimate of(SkillSum sum) {
    return posterior.of(sum);
  }

  @Override
  public double reference(Skill skill) {
    return references.getOrDefault(skill, 0.0);
  }
}
