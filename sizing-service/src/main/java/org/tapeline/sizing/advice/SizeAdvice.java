package org.tapeline.sizing.advice;

import java.util.Optional;

/**
 * Which size of a model to try.
 *
 * @param size empty outside of the chart
 * @param second a second size to bring, when the head lies near an edge
 * @param reason in plain words, for the fitter
 * @param chances how likely each size is, given how well the head is known
 */
public record SizeAdvice(
    String model,
    int chartVersion,
    Optional<String> size,
    Optional<String> second,
    Outcome outcome,
    String reason,
    SizeChances chances) {

  SizeAdvice saying(String more) {
    return new SizeAdvice(model, chartVersion, size, second, outcome, reason + more, chances);
  }

  /** How the head lies in the chart. */
  public enum Outcome {
    IN_SIZE("in-size"),
    BETWEEN_SIZES("between-sizes"),
    TOO_SMALL("too-small"),
    TOO_LARGE("too-large");

    private final String code;

    Outcome(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }
  }
}
