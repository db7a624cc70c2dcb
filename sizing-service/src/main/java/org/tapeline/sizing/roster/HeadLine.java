package org.tapeline.sizing.roster;

import java.util.List;

/**
 * A head with what it was held to be before.
 *
 * @param corrections oldest first; none when it was right
 */
record HeadLine(HeadRow head, List<CorrectionRow> corrections) {

  /** In the order of the heads. */
  static List<HeadLine> of(List<HeadRow> heads) {
    List<CorrectionRow> all =
        CorrectionRow.of(heads.stream().map(head -> head.player).distinct().toList());
    return heads.stream().map(head -> new HeadLine(head, of(head, all))).toList();
  }

  private static List<CorrectionRow> of(HeadRow head, List<CorrectionRow> all) {
    return all.stream()
        .filter(row -> row.player.equals(head.player) && row.corrects == head.version)
        .toList();
  }
}
