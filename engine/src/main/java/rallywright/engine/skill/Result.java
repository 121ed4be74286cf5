package rallywright.engine.skill;

/** How a game went, as much of it as is known. */
public sealed interface Result permits RalliesWon, RalliesByServer, ScorePath {}
