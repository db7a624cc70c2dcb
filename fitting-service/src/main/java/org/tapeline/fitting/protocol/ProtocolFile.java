package org.tapeline.fitting.protocol;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A protocol as it is written down. A remedy says what it changes (liner, straps ...) and a check
 * on what it depends; which checks a remedy voids follows, so that a new check cannot be forgotten.
 */
record ProtocolFile(
    String id,
    int version,
    String title,
    int hoursAnswersHold,
    List<Remedy.Care> care,
    Map<String, List<String>> rows,
    List<RemedyLine> remedies,
    List<CheckLine> checks,
    Fittings usual,
    List<ModelLine> models) {
  private static final Set<String> FINDINGS =
      Set.of("loose", "tight", "high", "low", "damaged", "slips", "other");
  private static final Set<String> AXES =
      Set.of(
          "front-back", "sides", "crown-height", "jaw-left", "jaw-right", "chin-strap", "hardware");
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  record RemedyLine(
      String id,
      String text,
      List<String> changes,
      List<String> items,
      Optional<StepLine> step,
      Optional<Remedy.Turn> turn,
      Optional<String> only,
      Optional<List<String>> care) {}

  /** The next part of a row, up or down. */
  record StepLine(String slot, String row, int by) {}

  record ModelLine(String model, Set<String> has, Map<String, String> fitted) {}

  record CheckLine(
      String id,
      String question,
      String how,
      String pass,
      String axis,
      String severity,
      List<String> sources,
      List<String> dependsOn,
      List<WayLine> ways,
      Optional<Measure> measure) {}

  record WayLine(String finding, String said, List<String> remedies, OtherwiseLine otherwise) {}

  record OtherwiseLine(Optional<String> helmet, Optional<String> part) {}

  /**
   * @throws IllegalArgumentException with the first thing that is wrong
   */
  Protocol read() {
    Set<String> dependedOn =
        checks.stream().flatMap(c -> c.dependsOn().stream()).collect(Collectors.toSet());
    Map<String, Remedy> byId =
        remedies.stream()
            .map(line -> remedy(line, dependedOn))
            .collect(Collectors.toMap(Remedy::id, Function.identity()));
    Protocol protocol =
        new Protocol(
            id,
            version,
            title,
            hoursAnswersHold,
            checks.stream().map(line -> check(line, byId)).toList(),
            usual,
            models.stream()
                .collect(
                    Collectors.toMap(
                        ModelLine::model, line -> new Fittings(line.has(), line.fitted()))));
    Set<String> unused = new HashSet<>(byId.keySet());
    protocol.checks().stream()
        .flatMap(c -> c.ways().stream())
        .flatMap(w -> w.remedies().stream())
        .forEach(r -> unused.remove(r.id()));
    require(unused.isEmpty(), "Remedies that no check proposes: " + unused);
    return protocol;
  }

  private Remedy remedy(RemedyLine line, Set<String> dependedOn) {
    require(line.id().matches(CODE), "A remedy's id is a code, not: " + line.id());
    require(said(line.text()), line.id() + " has no text");
    require(!line.changes().isEmpty(), line.id() + " changes nothing");
    line.changes()
        .forEach(c -> require(dependedOn.contains(c), "No check depends on the " + c + " changed"));
    List<String> voids =
        checks.stream()
            .filter(c -> c.dependsOn().stream().anyMatch(line.changes()::contains))
            .map(CheckLine::id)
            .toList();
    return new Remedy(
        line.id(),
        line.text(),
        voids,
        line.step().map(this::row).orElse(line.items()),
        line.step().map(step -> new Remedy.Step(step.slot(), step.by())),
        line.turn(),
        line.only(),
        line.care().orElse(List.of()).stream().map(this::careOf).toList());
  }

  private List<String> row(StepLine step) {
    require(rows.containsKey(step.row()), "There is no row of parts " + step.row());
    return rows.get(step.row());
  }

  private Remedy.Care careOf(String careId) {
    return care.stream()
        .filter(c -> c.id().equals(careId))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("There is no care note " + careId));
  }

  private static Check check(CheckLine line, Map<String, Remedy> remedies) {
    require(line.id().matches(CODE), "A check's id is a code, not: " + line.id());
    require(
        Stream.of(line.question(), line.how(), line.pass()).allMatch(ProtocolFile::said),
        line.id() + " lacks its question, how to do it or the passing answer");
    require(AXES.contains(line.axis()), line.id() + " is on no known axis");
    require(!line.sources().isEmpty(), line.id() + " names no source");
    require(!line.dependsOn().isEmpty(), line.id() + " depends on nothing");
    return new Check(
        line.id(),
        line.question(),
        line.how(),
        line.pass(),
        line.axis(),
        Check.Severity.valueOf(constant(line.severity())),
        String.join("; ", line.sources()),
        line.ways().stream().map(way -> way(line.id(), way, remedies)).toList(),
        line.measure());
  }

  private static Check.Way way(String check, WayLine line, Map<String, Remedy> remedies) {
    require(
        FINDINGS.contains(line.finding()), check + " has the unknown finding " + line.finding());
    require(said(line.said()), check + " has a finding without words");
    require(remedies.keySet().containsAll(line.remedies()), check + " has an unknown remedy");
    require(line.otherwise() != null, check + " has no way out");
    Optional<Otherwise.Helmet> helmet =
        line.otherwise().helmet().map(h -> Otherwise.Helmet.valueOf(constant(h)));
    return new Check.Way(
        line.finding(),
        line.said(),
        line.remedies().stream().map(remedies::get).toList(),
        new Otherwise(helmet, line.otherwise().part()));
  }

  private static String constant(String word) {
    return word.toUpperCase(Locale.ROOT).replace('-', '_');
  }

  private static boolean said(String text) {
    return text != null && !text.isBlank();
  }

  private static void require(boolean met, String otherwise) {
    if (!met) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
