package org.tapeline.sizing.offset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The offset of a model")
class OffsetPosteriorTest {
  private static final double[] EDGES = {
    Double.NEGATIVE_INFINITY, 521, 556, 586, Double.POSITIVE_INFINITY
  };

  @Test
  @DisplayName("is none while nothing passed, give or take 8 mm")
  void nothing() {
    OffsetPosterior prior = OffsetPosterior.prior();
    assertThat(prior.mm()).isCloseTo(0, within(1e-9));
    assertThat(prior.highMm()).isCloseTo(1.96 * 4, within(0.5));
    assertThat(prior.appliedMm()).isZero();
  }

  // Heads drawn around the one third of the US sample's middle; nobody is real.
  @ParameterizedTest
  @DisplayName("is found from the sizes that passed, and then applied")
  @ValueSource(doubles = {6, -6})
  void found(double truth) {
    OffsetPosterior learned = season(truth, 400);
    assertThat(learned.lowMm()).isLessThanOrEqualTo(truth);
    assertThat(learned.highMm()).isGreaterThanOrEqualTo(truth);
    assertThat(learned.appliedMm()).isCloseTo((int) truth, within(2));
  }

  @Test
  @DisplayName("is not applied while it may be none")
  void unclear() {
    assertThat(season(0, 400).appliedMm()).isZero();
    assertThat(season(6, 5).appliedMm()).isZero();
  }

  @Test
  @DisplayName("is not thrown off by one head in the wrong size")
  void oneSlip() {
    OffsetPosterior learned = season(0, 100);
    OffsetPosterior after = learned.after(500, 1.4, 586, Double.POSITIVE_INFINITY);
    assertThat(after.mm()).isCloseTo(learned.mm(), within(0.2));
  }

  @Test
  @DisplayName("covers the truth in about 95 of 100 seasons")
  void covers() {
    Random random = new Random(7);
    int covered = 0;
    for (int season = 0; season < 200; season++) {
      double truth = random.nextGaussian() * 4;
      OffsetPosterior learned = season(truth, 60, random);
      if (learned.lowMm() <= truth && truth <= learned.highMm()) {
        covered++;
      }
    }
    assertThat(covered).isBetween(180, 200);
  }

  private static OffsetPosterior season(double truth, int fits) {
    return season(truth, fits, new Random(42));
  }

  private static OffsetPosterior season(double truth, int fits, Random random) {
    OffsetPosterior learned = OffsetPosterior.prior();
    for (int i = 0; i < fits; i++) {
      double head = 545 + random.nextGaussian() * 17;
      double measured = head + random.nextGaussian() * 1.4;
      double counts = head + truth + random.nextGaussian() * 5;
      int size = 0;
      while (counts >= EDGES[size + 1]) {
        size++;
      }
      learned = learned.after(measured, 1.4, EDGES[size], EDGES[size + 1]);
    }
    return learned;
  }
}
