package rallywright.store;

import rallywright.engine.session.CourtEvent;

/**
 * An event with its place in the order of arrival.
 *
 * @param arrival the place, growing over the whole club, not without gaps
 * @param event the event
 */
public record StoredEvent(long arrival, CourtEvent event) {}
