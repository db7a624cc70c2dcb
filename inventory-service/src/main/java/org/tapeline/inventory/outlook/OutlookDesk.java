package org.tapeline.inventory.outlook;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tapeline.inventory.reconditioning.BatchStore;
import org.tapeline.inventory.reconditioning.DueList;
import org.tapeline.inventory.reconditioning.FleetHelmet;
import org.tapeline.inventory.reconditioning.HelmetRules;
import org.tapeline.inventory.reconditioning.PolicyOnFile;
import org.tapeline.inventory.reconditioning.Season;
import org.tapeline.inventory.reconditioning.Standing;
import org.tapeline.journal.EventJson;

/** Asks the outlook about the helmets and the need as they are. */
@ApplicationScoped
public class OutlookDesk {
  /** What is in quarantine or on hold may never be worn again, so it is not counted on. */
  private static final Set<String> NOT_COUNTED = Set.of("quarantined", "held");

  private final DueList fleet;
  private final OutlookNeeds needs;
  private final BatchStore batches;
  private final HelmetRules rules;
  private final PolicyOnFile reconditioning;
  private final OutlookPolicy policy;

  OutlookDesk(
      DueList fleet,
      OutlookNeeds needs,
      BatchStore batches,
      HelmetRules rules,
      PolicyOnFile reconditioning) {
    this.fleet = fleet;
    this.needs = needs;
    this.batches = batches;
    this.rules = rules;
    this.reconditioning = reconditioning;
    try (InputStream file = OutlookDesk.class.getResourceAsStream("/policy/outlook.json")) {
      policy = EventJson.MAPPER.readValue(file, OutlookPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The outlook with what it rests on.
   *
   * @param goFirst helmets that go to the reconditioner before the first season, about
   * @param rejectedFirst how many of those are rejected, exactly reckoned
   * @param made counted helmets by year of manufacture and size
   * @param noForecast sizes of helmets that are here without a forecast
   */
  public record Picture(
      Outlook.Answer answer,
      OutlookPolicy policy,
      RejectionShare share,
      int goFirst,
      Band rejectedFirst,
      Map<Integer, Map<String, Integer>> made,
      List<String> noForecast,
      String currency) {}

  Picture picture() {
    LocalDate today = fleet.today();
    Season season = reconditioning.get().season();
    List<FleetHelmet> helmets = new ArrayList<>();
    List<Cohort> cohorts = new ArrayList<>();
    for (Standing s : fleet.standings(today, today)) {
      if (!NOT_COUNTED.contains(s.helmet().state())) {
        helmets.add(s.helmet());
        cohorts.add(cohort(s, season));
      }
    }
    BatchStore.Judged judged = batches.judged();
    RejectionShare share =
        new RejectionShare(
            policy.priorRejected(), policy.priorCertified(), judged.rejected(), judged.judged());
    List<SizeNeed> wanted = needs.bySize(helmets, reconditioning.get().spareShare());
    Outlook.Answer answer = Outlook.of(question(today, season, cohorts, wanted, share));
    int go = (int) Math.round(cohorts.stream().mapToDouble(Cohort::goes).sum());
    return new Picture(
        answer,
        policy,
        share,
        go,
        exact(go, share),
        made(helmets),
        without(helmets, wanted),
        reconditioning.get().currency());
  }

  private Outlook.Question question(
      LocalDate today,
      Season season,
      List<Cohort> cohorts,
      List<SizeNeed> wanted,
      RejectionShare share) {
    HelmetRules.ForModel usual = rules.of("");
    return new Outlook.Question(
        season.endFrom(today).getYear(),
        policy.years(),
        !season.holds(today),
        cohorts,
        wanted,
        share.spread(policy.runs()),
        policy.growthMean(),
        policy.growthSd(),
        usual.lastAgeYears(),
        goes(usual),
        policy.seed());
  }

  private Cohort cohort(Standing s, Season season) {
    LocalDate last = s.lastAgeThrough();
    boolean through = !season.to().atYear(last.getYear()).isAfter(last);
    return new Cohort(
        s.helmet().size(),
        through ? last.getYear() : last.getYear() - 1,
        goes(rules.of(s.helmet().model())),
        1);
  }

  private static double goes(HelmetRules.ForModel rules) {
    return Math.min(1, 12.0 / rules.certifiedMonths());
  }

  private static Band exact(int go, RejectionShare share) {
    double[] chances = BetaBinomial.chances(go, share.a(), share.b());
    return new Band(
        BetaBinomial.quantile(chances, 0.05),
        BetaBinomial.quantile(chances, 0.5),
        BetaBinomial.quantile(chances, 0.95),
        go * share.mean());
  }

  private static Map<Integer, Map<String, Integer>> made(List<FleetHelmet> helmets) {
    Map<Integer, Map<String, Integer>> made = new TreeMap<>();
    helmets.forEach(
        h ->
            made.computeIfAbsent(h.manufacturedOn().getYear(), y -> new TreeMap<>())
                .merge(h.size(), 1, Integer::sum));
    return made;
  }

  private static List<String> without(List<FleetHelmet> helmets, List<SizeNeed> wanted) {
    Set<String> told = Set.copyOf(wanted.stream().map(SizeNeed::size).toList());
    return helmets.stream()
        .map(FleetHelmet::size)
        .filter(size -> !told.contains(size))
        .distinct()
        .sorted()
        .toList();
  }
}
