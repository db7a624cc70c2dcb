package org.tapeline.inventory.allocation;

import java.util.Arrays;

/** Assignment problems as they stand in books: one row each to one column each, at least cost. */
record Matrix(int[][] costs) {

  static Matrix of(String rows) {
    return new Matrix(
        Arrays.stream(rows.split(";"))
            .map(
                row -> Arrays.stream(row.strip().split(" +")).mapToInt(Integer::parseInt).toArray())
            .toArray(int[][]::new));
  }

  /** As many pieces as fit on the shorter side; an arc from row to column for each cost. */
  FlowNetwork network() {
    int rows = costs.length;
    int columns = costs[0].length;
    int pieces = Math.min(rows, columns);
    FlowNetwork network = new FlowNetwork();
    int source = network.node(pieces);
    int sink = network.node(-pieces);
    int[] row = new int[rows];
    int[] column = new int[columns];
    for (int r = 0; r < rows; r++) {
      row[r] = network.node(0);
      network.arc(source, row[r], 1, 0);
    }
    for (int c = 0; c < columns; c++) {
      column[c] = network.node(0);
      network.arc(column[c], sink, 1, 0);
    }
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        network.arc(row[r], column[c], 1, costs[r][c]);
      }
    }
    return network;
  }
}
