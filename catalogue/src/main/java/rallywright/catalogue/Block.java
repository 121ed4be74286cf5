package rallywright.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** A block of named entries of a drill file: nothing missing, nothing unknown, nothing twice. */
final class Block {

  private final Entry whole;
  private final Map<String, Entry> entries;

  private Block(Entry whole, Map<String, Entry> entries) {
    this.whole = whole;
    this.entries = entries;
  }

  /** The block at an entry, whatever its names. */
  static Block open(Entry whole) {
    if (!(whole.node() instanceof MappingNode mapping)) {
      throw whole.problem(
          "\"%s\" must be a block of named entries, but %s stands here. Maybe \"name: value\"."
              .formatted(whole.name(), whole.form()));
    }
    Map<String, Entry> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Entry key = new Entry(whole.file(), whole.name(), tuple.getKeyNode());
      if (!(tuple.getKeyNode() instanceof ScalarNode scalar)) {
        throw key.problem("The name of an entry must be a word. Maybe \"name: value\".");
      }
      String name = scalar.getValue();
      if (entries.containsKey(name)) {
        throw key.problem(
            "\"%s\" stands here a second time but is allowed once. Maybe delete one of them."
                .formatted(name));
      }
      entries.put(name, new Entry(whole.file(), name, tuple.getValueNode()));
    }
    return new Block(whole, entries);
  }

  /** The block at an entry, with these names: all of the required ones and no others. */
  static Block of(Entry whole, List<String> required, List<String> optional) {
    Block block = open(whole);
    block.refuseUnknown(required, optional);
    List<String> missing =
        required.stream().filter(name -> !block.entries.containsKey(name)).toList();
    if (!missing.isEmpty()) {
      throw whole.problem(
          "\"%s\" has no %s, which it needs. Maybe add \"%s: …\"."
              .formatted(
                  whole.name(),
                  String.join(", ", missing.stream().map(name -> "\"" + name + "\"").toList()),
                  missing.get(0)));
    }
    return block;
  }

  private void refuseUnknown(List<String> required, List<String> optional) {
    List<String> allowed = new ArrayList<>(required);
    allowed.addAll(optional);
    MappingNode mapping = (MappingNode) whole.node();
    for (NodeTuple tuple : mapping.getValue()) {
      String name = ((ScalarNode) tuple.getKeyNode()).getValue();
      if (!allowed.contains(name)) {
        throw new Entry(whole.file(), name, tuple.getKeyNode())
            .problem(
                "\"%s\" is not known in \"%s\", which may have: %s. %s"
                    .formatted(
                        name,
                        whole.name(),
                        String.join(", ", allowed),
                        Choice.maybe(name, allowed)));
      }
    }
  }

  /** The entry of a required name. */
  Entry get(String name) {
    Entry entry = entries.get(name);
    if (entry == null) {
      throw new IllegalStateException(
          "\"" + name + "\" was not asked for when the block was read.");
    }
    return entry;
  }

  Optional<Entry> find(String name) {
    return Optional.ofNullable(entries.get(name));
  }

  Map<String, Entry> entries() {
    return entries;
  }

  Entry whole() {
    return whole;
  }
}
