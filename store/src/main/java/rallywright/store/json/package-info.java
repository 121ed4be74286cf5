/**
 * How plans and events are written as JSON, in the database, in exports and between phone and
 * server.
 *
 * <p>Start with {@link rallywright.store.json.EventJson} and {@link
 * rallywright.store.json.PlanJson}. The mapping is written out field by field and carries a
 * version; nothing is guessed and nothing unknown is dropped.
 */
@NullMarked
package rallywright.store.json;

import org.jspecify.annotations.NullMarked;
