package org.tapeline.proof.fuzz.endpoint;

import java.util.List;
import java.util.random.RandomGenerator;
import org.tapeline.proof.fuzz.wire.Header;

/** What can be wrong in the headers. */
final class HeaderTwists {
  private static final String KEY = "Idempotency-Key";
  private static final List<String> KEYS =
      List.of("", "1", "1-1-1-1-1", "x".repeat(3_000), "\u00fc\u00ff", "null", "{}");
  private static final List<String> ACCEPTS =
      List.of(
          "",
          "*",
          "*/*;q=x",
          "text/html;;",
          "application/xml",
          "image/png",
          "/",
          "text/",
          ",,,",
          "application/json;q=2",
          "text/html;charset=\"",
          "a/b;".repeat(300));
  private static final List<String> LANGUAGES =
      List.of("", "*", "xx-YY-zz-" + "a".repeat(200), "en;q=abc", "-", "\u00fc", "en,".repeat(500));
  private static final List<String> TYPES =
      List.of(
          "",
          "text/plain",
          "application/xml",
          "application/json; charset=nonsense",
          "application/json; charset=utf-16",
          "application/json;charset=\"",
          "/",
          "multipart/form-data",
          "multipart/form-data; boundary=",
          "application/x-www-form-urlencoded",
          "application/x-www-form-urlencoded; charset=nonsense",
          "text/csv; charset=ebcdic",
          "text/csv");
  private static final List<Header> OTHERS =
      List.of(
          new Header("If-Match", "\"x"),
          new Header("If-None-Match", "W/,,\"\""),
          new Header("If-Modified-Since", "yesterday"),
          new Header("Range", "bytes=9-1,-,x"),
          new Header("Cookie", "quarkus-credential=AAAA; a; =; b=\u0001"),
          new Header("Cookie", "quarkus-credential=" + "A".repeat(3_000)),
          new Header("Authorization", "Basic ===="),
          new Header("Authorization", "Basic bWFuYWdlcg=="),
          new Header("Authorization", "Bearer x.y.z"),
          new Header("Authorization", "Basic " + "A".repeat(4_000)),
          new Header("Authorization", "Nonsense"),
          new Header("X-Forwarded-For", "<script>,\u00ff"),
          new Header("X-Forwarded-Host", "a b:c"),
          new Header("X-Forwarded-Proto", "javascript"),
          new Header("Forwarded", "for=\";by=;;proto"),
          new Header("Content-Encoding", "gzip"),
          new Header("Accept-Encoding", "nonsense;q=x"),
          new Header("traceparent", "00-zz"),
          new Header("Expect", "nothing"),
          new Header("Origin", "null"),
          new Header("HX-Request", "true"),
          new Header("X-HTTP-Method-Override", "DELETE"),
          new Header("Last-Event-ID", "\u0001"));

  private HeaderTwists() {}

  static List<Twist> all() {
    return List.of(
        new Twist("a malformed command id", HeaderTwists::hasKey, HeaderTwists::malformedKey),
        new Twist("no command id", HeaderTwists::hasKey, HeaderTwists::noKey),
        new Twist(
            "two command ids",
            HeaderTwists::hasKey,
            (d, r) -> d.headers.add(new Header(KEY, Oddities.pick(KEYS, r)))),
        new Twist(
            "an odd Accept", e -> true, (d, r) -> d.header("Accept", Oddities.pick(ACCEPTS, r))),
        new Twist(
            "an odd Accept-Language",
            e -> true,
            (d, r) -> d.header("Accept-Language", Oddities.pick(LANGUAGES, r))),
        new Twist(
            "another odd header", e -> true, (d, r) -> d.headers.add(Oddities.pick(OTHERS, r))),
        new Twist("headers twice", e -> true, (d, r) -> d.headers.addAll(List.copyOf(d.headers))),
        new Twist(
            "another content type",
            e -> !e.bodies().isEmpty(),
            (d, r) -> {
              byte[] sent = d.body();
              d.bytes = sent;
              d.contentType = Oddities.pick(TYPES, r);
            }),
        new Twist("a body where none is", e -> e.bodies().isEmpty(), HeaderTwists::body),
        new Twist("a header that is none", e -> true, HeaderTwists::none));
  }

  private static boolean hasKey(Endpoint endpoint) {
    return endpoint.parametersIn("header").contains(KEY);
  }

  private static void malformedKey(Draft draft, RandomGenerator random) {
    draft.header(KEY, Oddities.pick(KEYS, random));
  }

  private static void noKey(Draft draft, RandomGenerator random) {
    draft.headers.removeIf(header -> header.name().equals(KEY));
  }

  private static void body(Draft draft, RandomGenerator random) {
    draft.contentType = Oddities.pick(TYPES, random);
    draft.bytes = Encoded.utf8(Oddities.text(random));
  }

  private static void none(Draft draft, RandomGenerator random) {
    List<Header> none =
        List.of(
            new Header("Bad Name", "x"),
            new Header("Nul", "a\u0000b"),
            new Header("Long", "x".repeat(40_000)),
            new Header("Content-Length", "-1"),
            new Header("Content-Length", "99999999999999999999"),
            new Header("Transfer-Encoding", "chunked, identity"),
            new Header("Host", "a b"),
            new Header("Host", ""),
            new Header("Upgrade", "websocket"),
            new Header("", "x"));
    draft.headers.add(Oddities.pick(none, random));
    draft.broken = true;
  }
}
