package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tapeline.proof.faults.process.Part;

/** Every service has applied every stream of its peers to the last event, and nothing is parked. */
final class Consumers implements Check {
  private static final String NAME = "consumers";

  /** Who reads whom: docs/events/asyncapi.yaml. */
  static final Map<Part, List<Part>> READS =
      Map.of(
          Part.SIZING, List.of(Part.FITTING, Part.INVENTORY),
          Part.FITTING, List.of(Part.SIZING, Part.INVENTORY),
          Part.INVENTORY, List.of(Part.SIZING, Part.FITTING),
          Part.NOTIFY, List.of(Part.SIZING, Part.FITTING, Part.INVENTORY));

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    for (Part service : Part.SERVICES) {
      for (Map<String, String> parked :
          evidence.rows(
              service, "select topic, stream, version, reason, detail from inbox_parked")) {
        findings.lost(NAME, "parked at " + service.code() + ": " + parked);
      }
      Map<String, Long> applied = new HashMap<>();
      evidence
          .rows(service, "select topic, stream, version from inbox_position")
          .forEach(
              row ->
                  applied.put(
                      row.get("topic") + " " + row.get("stream"),
                      Long.parseLong(row.get("version"))));
      for (Part peer : READS.get(service)) {
        compare(service, peer, evidence, applied, findings);
      }
    }
  }

  private static void compare(
      Part service, Part peer, Evidence evidence, Map<String, Long> applied, Findings findings) {
    Map<String, Long> said = new HashMap<>();
    evidence.journal(peer).forEach(event -> said.merge(event.stream(), event.version(), Math::max));
    said.forEach(
        (stream, version) -> {
          long there = applied.getOrDefault(peer.code() + ".events " + stream, 0L);
          if (there != version) {
            findings.lost(
                NAME,
                service.code()
                    + " has applied "
                    + stream
                    + " of "
                    + peer.code()
                    + " up to "
                    + there
                    + " of "
                    + version);
          }
        });
    findings.looked("streams applied by consumers", said.size());
  }
}
