package org.tapeline.fitting.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tapeline.journal.EventJson;

@DisplayName("A fit protocol as it is written down")
class ProtocolFileTest {

  private static ObjectNode builtIn() throws IOException {
    try (InputStream in = Protocols.class.getResourceAsStream("/protocol/youth-football.json")) {
      return (ObjectNode) EventJson.MAPPER.readTree(in);
    }
  }

  private static Protocol read(JsonNode json) throws IOException {
    return EventJson.MAPPER.treeToValue(json, ProtocolFile.class).read();
  }

  private static ObjectNode check(JsonNode protocol, int at) {
    return (ObjectNode) protocol.get("checks").get(at);
  }

  private static ObjectNode way(JsonNode protocol, int at) {
    return (ObjectNode) check(protocol, at).get("ways").get(0);
  }

  private static ObjectNode remedy(JsonNode protocol, String id) {
    for (JsonNode remedy : protocol.get("remedies")) {
      if (remedy.get("id").asText().equals(id)) {
        return (ObjectNode) remedy;
      }
    }
    throw new IllegalArgumentException(id);
  }

  private static Arguments wrong(String what, String says, Consumer<ObjectNode> change) {
    return Arguments.of(what, says, change);
  }

  static Stream<Arguments> wrong() {
    return Stream.of(
        wrong("no checks", "No check depends on", p -> p.putArray("checks")),
        wrong("version 0", "has a version and checks", p -> p.put("version", 0)),
        wrong("answers for ever", "Answers hold", p -> p.put("hoursAnswersHold", 25)),
        wrong("answers for no time", "Answers hold", p -> p.put("hoursAnswersHold", 0)),
        wrong("a check twice", "the same id", p -> check(p, 1).put("id", "labels")),
        wrong("no question", "lacks its question", p -> check(p, 0).put("question", " ")),
        wrong("no how", "lacks its question", p -> check(p, 0).put("how", "")),
        wrong("no passing answer", "lacks its question", p -> check(p, 0).putNull("pass")),
        wrong("an odd id", "id is a code", p -> check(p, 0).put("id", "Has Spaces")),
        wrong("an axis of its own", "no known axis", p -> check(p, 0).put("axis", "mood")),
        wrong("no source", "names no source", p -> check(p, 0).putArray("sources")),
        wrong(
            "nothing it depends on", "depends on nothing", p -> check(p, 0).putArray("dependsOn")),
        wrong("no way to fail", "no way in which it fails", p -> check(p, 0).putArray("ways")),
        wrong("a finding twice", "names a finding twice", p -> both(check(p, 5))),
        wrong("an unknown finding", "unknown finding", p -> way(p, 0).put("finding", "odd")),
        wrong("a finding without words", "without words", p -> way(p, 0).put("said", "")),
        wrong("an unknown remedy", "unknown remedy", p -> way(p, 0).putArray("remedies").add("x")),
        wrong("no way out", "no way out", p -> way(p, 0).putNull("otherwise")),
        wrong("no helmet and no part", "a helmet or a part", p -> way(p, 0).putObject("otherwise")),
        wrong("a remedy without words", "has no text", p -> remedy(p, "add-air").put("text", "")),
        wrong("an odd remedy id", "id is a code", p -> remedy(p, "add-air").put("id", "A B")),
        wrong(
            "a remedy that changes nothing",
            "changes nothing",
            p -> remedy(p, "add-air").putArray("changes")),
        wrong(
            "a remedy that changes what no check depends on",
            "No check depends on",
            p -> remedy(p, "add-air").putArray("changes").add("colour")),
        wrong("a remedy that nobody proposes", "no check proposes", ProtocolFileTest::oneMore),
        wrong("an unknown care note", "no care note", p -> p.putArray("care")),
        wrong("an unknown row", "no row of parts", p -> p.putObject("rows")),
        wrong("a row of one part", "row of at least two", p -> row(p).removeAll().add("a")),
        wrong("a row without the usual part", "not in its row", p -> row(p).set(1, "jaw-pad-99mm")),
        wrong("a step of two", "one up or one down", p -> step(p).put("by", 2)),
        wrong("a turn of nothing", "up or down", p -> turn(p).put("by", 0)),
        wrong("a turn without end", "1 to 5 times", p -> turn(p).put("most", 6)),
        wrong("a turn never made", "1 to 5 times", p -> turn(p).put("most", 0)),
        wrong(
            "a measure to a finding that is not there",
            "measures to a finding",
            p -> measure(p).put("under", "damaged")),
        wrong(
            "a measure over to a finding that is not there",
            "measures to a finding",
            p -> measure(p).put("over", "damaged")));
  }

  private static void both(ObjectNode check) {
    ((ArrayNode) check.get("ways")).add(check.get("ways").get(0).deepCopy());
  }

  private static void oneMore(ObjectNode protocol) {
    ObjectNode copy = remedy(protocol, "add-air").deepCopy();
    ((ArrayNode) protocol.get("remedies")).add(copy.put("id", "sing"));
  }

  private static ArrayNode row(ObjectNode protocol) {
    return (ArrayNode) protocol.get("rows").get("jaw-pads");
  }

  private static ObjectNode step(ObjectNode protocol) {
    return (ObjectNode) remedy(protocol, "thicker-left-jaw-pad").get("step");
  }

  private static ObjectNode turn(ObjectNode protocol) {
    return (ObjectNode) remedy(protocol, "add-air").get("turn");
  }

  private static ObjectNode measure(ObjectNode protocol) {
    for (JsonNode check : protocol.get("checks")) {
      if (check.get("id").asText().equals("brow-clearance")) {
        return (ObjectNode) check.get("measure");
      }
    }
    throw new IllegalStateException("The brow is not measured");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrong")
  @DisplayName("is not taken with")
  void notTaken(String what, String says, Consumer<ObjectNode> change) throws IOException {
    ObjectNode protocol = builtIn();
    change.accept(protocol);
    assertThatThrownBy(() -> read(protocol)).hasMessageContaining(says);
  }

  /**
   * 13 criteria: Yeargin et al., Annals of Biomedical Engineering 2021; 7 criteria: Football Helmet
   * Fitting Errors in Wisconsin High School Players, ASTM STP, 1997.
   */
  @Test
  @DisplayName("covers the 13 published criteria and the 7 of the earlier study")
  void criteria() {
    assertThat(from("13 criteria"))
        .containsExactlyInAnyOrder(
            "good-condition",
            "padding-in-place",
            "snaps-and-screws",
            "certification-mark",
            "snug",
            "base-of-skull",
            "brow-clearance",
            "neck-free",
            "eyes-clear",
            // one criterion: centred, with equal tension
            "strap-cup",
            "strap-even",
            "face-guard-side",
            "face-guard-up",
            "skin-moves");
    assertThat(from("7 criteria"))
        .containsExactlyInAnyOrder(
            "brow-clearance",
            "nose-clearance",
            // one criterion: centred and tight
            "strap-cup",
            "strap-tight",
            // one criterion: both sides
            "jaw-pad-left",
            "jaw-pad-right",
            "ear-holes",
            "base-of-skull",
            "front-back-still");
  }

  private static Set<String> from(String study) {
    return Protocols.builtIn().checks().stream()
        .filter(c -> c.source().contains(study))
        .map(Check::id)
        .collect(Collectors.toSet());
  }

  @Test
  @DisplayName("covers labels, strap hook-up, liner air and taking the helmet off, in that order")
  void commonPractice() {
    List<String> ids = Protocols.builtIn().checks().stream().map(Check::id).toList();
    assertThat(ids)
        .startsWith("labels")
        .containsSubsequence(
            "strap-cup", "strap-even", "upper-straps-under-guard", "snaps-closed", "liner-air")
        .endsWith("takes-off");
  }

  @Test
  @DisplayName("voids by a remedy every check that depends on what it changes")
  void voids() {
    Protocol protocol = Protocols.builtIn();
    Remedy pad = protocol.check("jaw-pad-left").orElseThrow().remedies("loose").get(1);
    assertThat(pad.id()).isEqualTo("thicker-left-jaw-pad");
    assertThat(pad.items())
        .containsExactly("jaw-pad-10mm", "jaw-pad-15mm", "jaw-pad-20mm", "jaw-pad-25mm");
    assertThat(pad.voids())
        .contains("snug", "jaw-pad-left", "strap-cup", "strap-tight", "takes-off")
        .doesNotContain("labels", "jaw-pad-right", "brow-clearance");
  }

  @Test
  @DisplayName("says what a model comes with, and of an unknown one what is usual")
  void models() {
    Protocol protocol = Protocols.builtIn();
    assertThat(protocol.fittings("model-b").has()).contains("inflatable-jaw-pads");
    assertThat(protocol.fittings("model-x")).isEqualTo(protocol.usual());
    Remedy air = protocol.check("jaw-pad-left").orElseThrow().remedies("loose").getFirst();
    assertThat(protocol.possible(air, "model-a")).isFalse();
    assertThat(protocol.possible(air, "model-b")).isTrue();
    assertThat(protocol.possible(air, "model-x")).as("nobody knows").isTrue();
    assertThat(protocol.question("snug")).isEqualTo("Snug on all sides");
    assertThat(protocol.question("no-such-check")).isEqualTo("no-such-check");
    assertThat(protocol.remedies()).doesNotHaveDuplicates().hasSizeGreaterThan(20);
  }
}
