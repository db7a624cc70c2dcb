package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.Map;
import java.util.TreeMap;
import org.tapeline.proof.faults.compare.HelmetLife.Now;
import org.tapeline.proof.faults.process.Part;

/** Helmets are where the journal says, in inventory's own table and in its peers' copies. */
final class HelmetCopies implements Check {
  private static final String NAME = "helmets";

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Map<String, Now> expected = HelmetLife.of(evidence).all();
    for (Part service : new Part[] {Part.INVENTORY, Part.FITTING}) {
      Map<String, Now> found = new TreeMap<>();
      evidence
          .rows(service, "select tag, state, holder, place from helmet where state <> 'ordered'")
          .forEach(
              row ->
                  found.put(
                      row.get("tag"),
                      new Now(row.get("state"), row.get("holder"), row.get("place"))));
      expected.forEach(
          (tag, now) ->
              findings.same(
                  NAME,
                  tag + " in the table of " + service.code(),
                  now,
                  found.getOrDefault(tag, new Now("none", "", ""))));
      findings.looked("helmets in tables", found.size());
    }
    usable(expected, evidence, findings);
  }

  /** Sizing counts those that can be given out or are given out. */
  private static void usable(Map<String, Now> expected, Evidence evidence, Findings findings)
      throws SQLException {
    Map<String, String> found = new TreeMap<>();
    evidence
        .rows(Part.SIZING, "select tag, usable from usable_helmet")
        .forEach(row -> found.put(row.get("tag"), row.get("usable")));
    expected.forEach(
        (tag, now) -> {
          boolean usable = now.state().equals("available") || now.state().equals("issued");
          findings.same(
              NAME,
              tag + " counted by sizing as usable",
              usable ? "t" : "f",
              found.getOrDefault(tag, "none"));
        });
  }
}
