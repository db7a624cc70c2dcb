package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.TreeSet;
import org.tapeline.proof.faults.process.Part;

/** What sizing knows of players, their families and their sizes stands in its peers' copies. */
final class RosterCopies implements Check {
  private static final String NAME = "roster";

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Copies copies = new Copies(evidence, findings);
    copies.compare(
        "select player, number, given_name, family_name, team, field from player",
        Part.FITTING,
        "select player, number, given_name, family_name, team, field from player");
    copies.compare(
        "select player, field from player",
        Part.INVENTORY,
        "select player, field from player_field");
    copies.compare(
        "select player, given_name, team, field from player",
        Part.NOTIFY,
        "select player, given_name, team, field from player");
    copies.compare(
        "select guardian, name, email, phone, language from guardian",
        Part.NOTIFY,
        "select guardian, name, email, phone, language from guardian");
    for (Part peer : new Part[] {Part.FITTING, Part.NOTIFY}) {
      copies.compare(
          "select guardian, player from guardianship",
          peer,
          "select guardian, player from guardianship");
    }
    copies.compare(
        "select player, model, size from advice where size is not null",
        Part.FITTING,
        "select player, model, size from advised_size where size is not null");
    copies.compare(
        "select player, model, size from advice where size is not null",
        Part.INVENTORY,
        "select player, model, size from advised_size where choice = 1");
  }

  private record Copies(Evidence evidence, Findings findings) {
    void compare(String own, Part peer, String copy) throws SQLException {
      var there = new TreeSet<String>();
      evidence.rows(Part.SIZING, own).forEach(row -> there.add(row.values().toString()));
      var copied = new TreeSet<String>();
      evidence.rows(peer, copy).forEach(row -> copied.add(row.values().toString()));
      there.stream()
          .filter(row -> !copied.contains(row))
          .forEach(row -> findings.lost(NAME, peer.code() + " has no " + row + " (" + copy + ")"));
      copied.stream()
          .filter(row -> !there.contains(row))
          .forEach(
              row -> findings.differing(NAME, peer.code() + " has " + row + " (" + copy + ")"));
      findings.looked("rows in copies of the roster", copied.size());
    }
  }
}
