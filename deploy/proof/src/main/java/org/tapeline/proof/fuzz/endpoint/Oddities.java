package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** Values that programs stumble over. */
public final class Oddities {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\u00a0\u2003",
          "\u0000",
          "a\u0000b",
          "\ud800",
          "x\udc00y",
          "\uffff\ufffe",
          "\ufeffa",
          "\u202egnp.exe",
          "e\u0301\u0301\u0301",
          "\u200d\u200b\u2060",
          "\ud83c\udfc8\ud83d\udc69\u200d\ud83d\udc67",
          "\u0130\u0131\u00df\ufb03",
          "a\r\nBcc: somebody@example.org\r\n\r\nx",
          "a\tb\u000bc\u001b[31m\u007f\u0085",
          "<x-marked>",
          "\"><x-marked onerror=alert(1)>",
          "'; drop table journal; --",
          "%' or '1'='1",
          "\\",
          "%00%0d%0a",
          "{{7*7}}${7*7}{#if true}x{/if}",
          "../../../../etc/passwd",
          "=1+1",
          "@SUM(A1)",
          "null",
          "true",
          "[]",
          "{}",
          "[",
          "(((((",
          "*",
          "NaN",
          "Infinity",
          "-0",
          "1e400",
          "1e999999999",
          "9223372036854775808",
          "-9223372036854775809",
          "2147483648",
          "0x10",
          "\u0661\u0662\u0663",
          "\u00bd",
          "22\u215e",
          "22 7/8\"",
          "22 7/0",
          "-1/3 in",
          "99999999999999999999 cm",
          "0000000000000000000021.5",
          "54,5 cm",
          "1-1-1-1-1",
          "00000000-0000-0000-0000-000000000000",
          "ffffffff-ffff-ffff-ffff-ffffffffffff",
          "{00000000-0000-0000-0000-000000000000}");

  private static final List<String> DATES =
      List.of(
          "0000-00-00",
          "0001-01-01",
          "-0001-01-01",
          "1582-10-10",
          "2026-02-30",
          "2026-13-01",
          "2026-8-1",
          "08/01/2026",
          "9999-12-31",
          "10000-01-01",
          "+10000-01-01",
          "+999999999-12-31",
          "-999999999-01-01",
          "2026-08-01T25:61:00Z",
          "2026-08-01T10:00:00",
          "+1000000000-12-31T23:59:59.999999999Z",
          "-1000000000-01-01T00:00:00Z",
          "1970-01-01T00:00:00+99:99",
          "24:00",
          "99:99",
          "P1D",
          "PT-1S",
          "yesterday");

  private static final List<JsonNode> NUMBERS =
      List.of(
          JSON.numberNode(0),
          JSON.numberNode(-1),
          JSON.numberNode(Integer.MAX_VALUE),
          JSON.numberNode(Integer.MIN_VALUE),
          JSON.numberNode(Integer.MAX_VALUE + 1L),
          JSON.numberNode(Long.MAX_VALUE),
          JSON.numberNode(BigInteger.TEN.pow(200)),
          JSON.numberNode(0.1),
          JSON.numberNode(-0.0),
          JSON.numberNode(Double.MAX_VALUE),
          JSON.numberNode(Double.MIN_VALUE),
          JSON.numberNode(new BigDecimal("1E+400")),
          JSON.numberNode(new BigDecimal("1E+2000000000")),
          JSON.numberNode(new BigDecimal("1E-2000000000")));

  private static final List<JsonNode> SHAPES =
      List.of(
          JSON.nullNode(),
          JSON.booleanNode(true),
          JSON.booleanNode(false),
          JSON.arrayNode(),
          JSON.objectNode(),
          JSON.arrayNode().addNull().addNull(),
          JSON.arrayNode().add(JSON.arrayNode().add(JSON.arrayNode())),
          JSON.objectNode().put("value", 1).putNull("other"),
          deep());

  private Oddities() {}

  /** Deeper than anything that anybody means, not deeper than a parser allows. */
  private static JsonNode deep() {
    return IntStream.range(0, 400)
        .mapToObj(i -> (JsonNode) null)
        .reduce(JSON.arrayNode(), (inner, next) -> JSON.arrayNode().add(inner));
  }

  public static String text(RandomGenerator random) {
    return switch (random.nextInt(14)) {
      case 12 -> "a\u0000b";
      case 13 -> "x\ud800y";
      case 0 -> "x".repeat(300 + random.nextInt(4_000));
      case 1 -> "a\u0308".repeat(1 + random.nextInt(3_000));
      case 2 -> random(random);
      case 3, 4 -> date(random);
      default -> pick(TEXTS, random);
    };
  }

  /** Any characters at all, those that stand for nothing too. */
  private static String random(RandomGenerator random) {
    return IntStream.range(0, 1 + random.nextInt(40))
        .mapToObj(i -> String.valueOf((char) random.nextInt(0x10000)))
        .reduce("", String::concat);
  }

  public static String date(RandomGenerator random) {
    return pick(DATES, random);
  }

  public static JsonNode number(RandomGenerator random) {
    return pick(NUMBERS, random);
  }

  /** A value of any type but that of plain text. */
  public static JsonNode shape(RandomGenerator random) {
    return random.nextInt(3) == 0 ? number(random) : pick(SHAPES, random);
  }

  public static <T> T pick(List<T> from, RandomGenerator random) {
    return from.get(random.nextInt(from.size()));
  }
}
