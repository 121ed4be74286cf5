package rallywright.store;

/** What happens to the games of a person who is erased. */
public enum ErasedGames {
  /** They stay, played by a nameless opponent, so that the results of others keep their meaning. */
  KEEP,
  /** They go too: from the plans, and with all events that belong to them. */
  REMOVE
}
