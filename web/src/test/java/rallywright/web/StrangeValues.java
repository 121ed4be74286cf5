package rallywright.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Values that nobody should send, and good ones with something spoilt. All follow from a seed. */
final class StrangeValues {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** Spoilt texts as they stand in an address or a form, that is percent-encoded. */
  private static final List<String> ENCODED =
      List.of(
          "%00", "%ED%A0%80", "%FF%FE", "%2e%2e%2f", "%252e", "a%0d%0ab", "%F0%9F%8E%BE", "%C2");

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "null",
          "undefined",
          "true",
          "on",
          "-1",
          "0",
          "1",
          "2",
          "7",
          "41",
          "1.5",
          "1,5",
          "-0.0",
          "1e309",
          "1e-320",
          "NaN",
          "Infinity",
          "2147483648",
          "-9223372036854775808",
          "99999999999999999999999",
          "0x10",
          "１２",
          "2026-02-30",
          "9999-12-31",
          "+999999999-12-31",
          "0000-00-00",
          "25:61",
          "18:30:00.000000001",
          "<script>alert(1)</script>",
          "'; drop table player; --",
          "${7*7}#{7*7}@{x}",
          "../../etc",
          "\u202eabc",
          "e\u0301\u0301\u0301",
          "\ud83c\udfbe",
          "[]",
          "{}",
          "[[1],{\"a\":2}]",
          "A,B;C|D",
          "\"",
          "line\nline",
          "tab\there",
          "p1",
          "b2-t1-l1",
          "tuesday-evening");

  private final Random random;

  StrangeValues(long seed) {
    random = new Random(seed);
  }

  /** One of a list. */
  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** A number from 0 to below the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** True once in so many times. */
  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  /** A strange text. */
  String text() {
    return switch (random.nextInt(12)) {
      case 0 -> "x".repeat(1 + random.nextInt(6000));
      case 1 -> "\u00e9".repeat(1 + random.nextInt(300));
      case 2 -> String.valueOf(random.nextLong());
      case 3 -> letters(1 + random.nextInt(12));
      default -> one(TEXTS);
    };
  }

  private String letters(int count) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < count; i++) {
      letters.append((char) random.nextInt(0xd800));
    }
    return letters.toString();
  }

  /** A good text with something spoilt, or a strange one. */
  String spoilt(String good) {
    if (good.isEmpty() || random.nextInt(3) > 0) {
      return text();
    }
    int at = random.nextInt(good.length());
    return switch (random.nextInt(5)) {
      case 0 -> good.substring(0, at);
      case 1 -> good.substring(0, at) + good;
      case 2 -> good.substring(0, at) + (char) random.nextInt(0xd800) + good.substring(at + 1);
      case 3 -> good + text();
      default -> "-" + good;
    };
  }

  /** A spoilt value, percent-encoded for an address or a form. */
  String encoded(String good) {
    return oneIn(6) ? one(ENCODED) : URLEncoder.encode(spoilt(good), StandardCharsets.UTF_8);
  }

  /** A tree with one to three places spoilt. */
  JsonNode spoilt(JsonNode tree) {
    JsonNode copy = tree.deepCopy();
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      copy = spoiltOnce(copy);
    }
    return copy;
  }

  private JsonNode spoiltOnce(JsonNode node) {
    if (node instanceof ObjectNode object && !object.isEmpty() && !oneIn(12)) {
      String name = one(List.copyOf(object.propertyNames()));
      switch (random.nextInt(6)) {
        case 0 -> object.remove(name);
        case 1 -> object.set(spoilt(name), value());
        case 2, 3 -> object.set(name, spoiltOnce(object.get(name)));
        default -> object.set(name, value());
      }
      return object;
    }
    if (node instanceof ArrayNode array && !array.isEmpty() && !oneIn(12)) {
      int at = random.nextInt(array.size());
      switch (random.nextInt(4)) {
        case 0 -> array.remove(at);
        case 1 -> array.add(array.get(at).deepCopy());
        default -> array.set(at, spoiltOnce(array.get(at)));
      }
      return array;
    }
    return node.isString() && oneIn(2) ? JSON.valueToTree(spoilt(node.stringValue())) : value();
  }

  private JsonNode value() {
    return switch (random.nextInt(9)) {
      case 0 -> JSON.nullNode();
      case 1 -> JSON.createObjectNode();
      case 2 -> JSON.createArrayNode().add(text());
      case 3 -> JSON.valueToTree(random.nextLong());
      case 4 -> JSON.valueToTree(random.nextInt(30) - 5);
      case 5 -> JSON.valueToTree(random.nextGaussian() * Math.pow(10, random.nextInt(300)));
      case 6 -> JSON.valueToTree(random.nextBoolean());
      default -> JSON.valueToTree(text());
    };
  }

  /** A message of bytes, mostly spoilt in some place. */
  byte[] spoiltBytes(byte[] good) {
    if (good.length == 0 || oneIn(3)) {
      return good;
    }
    byte[] bytes = good.clone();
    switch (random.nextInt(4)) {
      case 0 -> bytes = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
      case 1 -> bytes = "[".repeat(1 + random.nextInt(5000)).getBytes(StandardCharsets.UTF_8);
      case 2 -> random.nextBytes(bytes);
      default -> {
        for (int times = 1 + random.nextInt(4); times > 0; times--) {
          bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
      }
    }
    return bytes;
  }
}
