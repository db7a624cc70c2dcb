package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.Scanner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The flow of least cost")
class LeastCostFlowTest {
  private static final String FOUR = "82 83 69 92; 77 37 49 92; 11 69 5 86; 8 9 98 23";
  private static final String FIVE =
      "90 80 75 70; 35 85 55 65; 125 95 90 95; 45 110 95 115; 50 100 90 100";

  @Test
  @DisplayName("is 305 for OR-Library's assign100")
  void assign100() throws IOException {
    assertProved(assign100Matrix(), 305);
  }

  @Test
  @DisplayName("is 140 and 265 for the textbook's four by four and five by four")
  void textbook() {
    // Costs and optima from memory; recomputed by trying every assignment.
    assertProved(Matrix.of(FOUR), 140);
    assertProved(Matrix.of(FIVE), 265);
  }

  @Test
  @DisplayName("that is made dearer is not proved any more")
  void worse() throws IOException {
    Matrix matrix = assign100Matrix();
    FlowNetwork network = matrix.network();
    long[] best = new LeastCostFlow().leastCost(network);
    Random random = new Random(5);
    for (int times = 0; times < 20; times++) {
      long[] worse = swapped(matrix, best, random);
      OptimalityProof proof = OptimalityProof.of(network, worse);
      assertThat(proof.possible()).isTrue();
      assertThat(proof.cost()).isGreaterThanOrEqualTo(305);
      assertThat(proof.leastPossible()).isLessThanOrEqualTo(305);
      assertThat(proof.proved()).isEqualTo(proof.cost() == 305);
    }
  }

  @Test
  @DisplayName("that takes more than there is, or leaves something out, is not possible")
  void impossible() {
    FlowNetwork network = Matrix.of(FOUR).network();
    long[] best = new LeastCostFlow().leastCost(network);
    for (int arc = 0; arc < network.arcs(); arc++) {
      for (int change : new int[] {-1, 1}) {
        long[] wrong = best.clone();
        wrong[arc] += change;
        OptimalityProof proof = OptimalityProof.of(network, wrong);
        assertThat(proof.possible()).isFalse();
        assertThat(proof.proved()).isFalse();
      }
    }
  }

  private static void assertProved(Matrix matrix, long optimum) {
    FlowNetwork network = matrix.network();
    long[] flow = new LeastCostFlow().leastCost(network);
    assertThat(OptimalityProof.of(network, flow))
        .isEqualTo(new OptimalityProof(true, optimum, optimum));
  }

  /** Two rows exchange their columns. */
  private static long[] swapped(Matrix matrix, long[] flow, Random random) {
    int n = matrix.costs().length;
    int first = 2 * n;
    int a = random.nextInt(n);
    int b = (a + 1 + random.nextInt(n - 1)) % n;
    long[] swapped = flow.clone();
    for (int c = 0; c < n; c++) {
      swapped[first + a * n + c] = flow[first + b * n + c];
      swapped[first + b * n + c] = flow[first + a * n + c];
    }
    return swapped;
  }

  /** J. E. Beasley's OR-Library, assignment problem, first instance. */
  private static Matrix assign100Matrix() throws IOException {
    try (InputStream file =
            LeastCostFlowTest.class.getResourceAsStream("/allocation/assign100.txt");
        Scanner numbers = new Scanner(file, StandardCharsets.US_ASCII)) {
      int n = numbers.nextInt();
      int[][] costs = new int[n][n];
      for (int[] row : costs) {
        for (int c = 0; c < n; c++) {
          row[c] = numbers.nextInt();
        }
      }
      return new Matrix(costs);
    }
  }
}
