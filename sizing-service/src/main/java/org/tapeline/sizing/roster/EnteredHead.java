package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.growth.Age;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.measurer.Measurers;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.reading.Reading;
import org.tapeline.sizing.reading.ReadingText;
import org.tapeline.sizing.reading.ReadingText.Understood;
import org.tapeline.sizing.units.Millimetres;

/** From what somebody typed to a measurement. */
@ApplicationScoped
class EnteredHead {
  private static final int LEAST = 2;
  private static final int MOST = 3;

  private final GrowthReference growth;
  private final Measurers measurers;

  EnteredHead(GrowthReference growth, Measurers measurers) {
    this.growth = growth;
    this.measurers = measurers;
  }

  /**
   * @param readings as typed; errors carry the place of the reading as it was sent, so that a page
   *     marks the right field
   * @param measurer staff id of who held the tape
   * @throws Problem when a reading is not understood, or a third one is needed
   */
  Measurement measurement(List<String> readings, String measurer) {
    List<Reading> understood = understand(readings);
    return switch (Measurement.of(understood, measurers.repeatError(measurer).mm())) {
      case Measurement.Result.Ok ok -> ok.measurement();
      case Measurement.Result.ThirdNeeded third ->
          throw new Problem(
              422,
              "third-reading-needed",
              "A third reading is needed",
              "The two readings lie "
                  + Math.round(third.apart().value())
                  + " mm apart, more than 5 mm. Take a third one.",
              List.of(new FieldError("readings[2]", "Take a third reading.")));
    };
  }

  /**
   * Where a head lies among children of the age that the player had; empty when the player was
   * erased.
   */
  Optional<HeadForAge> forAge(UUID player, Millimetres head, Instant measured) {
    PlayerRow row = PlayerRow.findById(player);
    if (row == null) {
      return Optional.empty();
    }
    double age = Age.years(row.birthDate, LocalDate.ofInstant(measured, ZoneOffset.UTC));
    return Optional.of(growth.place(Sex.of(row.sex), age, head));
  }

  /**
   * @throws Problem for a word that is not known
   */
  static Hair hair(String code) {
    return Hair.of(code)
        .orElseThrow(
            () ->
                Problem.badRequest(
                    "hair",
                    "The hair is not known by that word.",
                    new FieldError("hair", "Write usual, short, long or braids.")));
  }

  private static List<Reading> understand(List<String> texts) {
    List<String> given = texts == null ? List.of() : texts;
    List<Reading> readings = new ArrayList<>();
    List<FieldError> errors = new ArrayList<>();
    for (int i = 0; i < Math.max(given.size(), LEAST); i++) {
      String text = i < given.size() && given.get(i) != null ? given.get(i) : "";
      if (text.isBlank() && i >= LEAST) {
        continue;
      }
      switch (ReadingText.understand(text)) {
        case Understood.Ok ok -> readings.add(ok.reading());
        case Understood.Not not -> errors.add(new FieldError("readings[" + i + "]", not.reason()));
      }
    }
    if (readings.size() > MOST) {
      errors.add(new FieldError("readings[" + MOST + "]", "Two readings are enough, or three."));
    }
    if (!errors.isEmpty()) {
      throw new Problem(
          422, "readings", "Not recorded", "Correct the readings that are marked.", errors);
    }
    return readings;
  }
}
