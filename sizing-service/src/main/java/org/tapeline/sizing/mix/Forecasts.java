package org.tapeline.sizing.mix;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.growth.GrowthReference;

/** Reckons the size mix of the roster, and tells the other services when it is published. */
@ApplicationScoped
public class Forecasts {
  private static final int FARTHEST_DAYS = 730;
  private static final double LARGEST_COST = 100_000;

  private final Roster roster;
  private final Charts charts;
  private final UsableHelmets helmets;
  private final GrowthReference growth;
  private final CommandLog commands;
  private final Journal journal;
  private final Clock clock;

  Forecasts(
      Roster roster,
      Charts charts,
      UsableHelmets helmets,
      GrowthReference growth,
      CommandLog commands,
      Journal journal,
      Clock clock) {
    this.roster = roster;
    this.charts = charts;
    this.helmets = helmets;
    this.growth = growth;
    this.commands = commands;
    this.journal = journal;
    this.clock = clock;
  }

  /**
   * What is asked.
   *
   * @param day on which the helmets are needed; today when not said
   * @param tooFew cost of each missing helmet; 100 when not said
   * @param tooMany cost of each helmet left over; 40 when not said
   */
  public record Question(LocalDate day, Double tooFew, Double tooMany) {
    Newsvendor costs() {
      return new Newsvendor(tooFew == null ? 100 : tooFew, tooMany == null ? 40 : tooMany);
    }
  }

  /**
   * One forecast a model with a chart; all players are counted for each model alone.
   *
   * @throws Problem when a value is not one to reckon with
   */
  public List<Forecast> of(Question question) {
    return of(question, charts.inForce());
  }

  private List<Forecast> of(Question question, List<SizeChart> wanted) {
    check(question);
    LocalDate today = LocalDate.now(clock);
    LocalDate day = question.day() == null ? today : question.day();
    Roster.OnDay onDay = roster.on(day);
    OwnHeads own = OwnHeads.of(onDay.own());
    return wanted.stream().map(chart -> of(chart, day, onDay, own, question.costs())).toList();
  }

  private Forecast of(
      SizeChart chart, LocalDate day, Roster.OnDay onDay, OwnHeads own, Newsvendor costs) {
    SizeMix mix = new SizeMix(chart, growth, own);
    List<CountDistribution> counts = mix.counts(onDay.known(), onDay.unknown());
    return Forecast.of(chart, day, onDay, counts, helmets.of(chart.model()), costs);
  }

  /** Says the forecast of a model to the other services. */
  public Answer publish(UUID commandId, String model, Question question) {
    return commands.once(
        commandId,
        "publish-size-mix/" + model,
        question,
        () -> {
          SizeChart chart =
              charts
                  .newest(model)
                  .orElseThrow(() -> Problem.notFound("No chart of " + model + " is published."));
          Forecast forecast = of(question, List.of(chart)).getFirst();
          StreamName stream = StreamName.of("forecast", model, model);
          journal.append(
              stream,
              journal.load(stream).size(),
              List.of(SizeMixForecast.of(forecast, question.costs(), clock.instant())),
              Cause.command(commandId));
          return Answer.of(200, forecast);
        });
  }

  private void check(Question question) {
    LocalDate today = LocalDate.now(clock);
    if (question.day() != null
        && (question.day().isBefore(today)
            || question.day().isAfter(today.plusDays(FARTHEST_DAYS)))) {
      throw wrong("day", "Choose a day from today to two years ahead.");
    }
    if (!cost(question.tooFew())) {
      throw wrong("tooFew", "Write an amount above 0, at most 100000.");
    }
    if (!cost(question.tooMany())) {
      throw wrong("tooMany", "Write an amount above 0, at most 100000.");
    }
  }

  private static boolean cost(Double amount) {
    return amount == null || amount > 0 && amount <= LARGEST_COST;
  }

  private static Problem wrong(String field, String what) {
    return Problem.badRequest("size-mix", what, new FieldError(field, what));
  }
}
