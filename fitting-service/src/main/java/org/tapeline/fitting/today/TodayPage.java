package org.tapeline.fitting.today;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.roster.Words;

/** A fitter's day: whom to see first. */
@Path("/today")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class TodayPage {
  private final DayList list;
  private final Clock clock;

  TodayPage(DayList list, Clock clock) {
    this.list = list;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "today")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Section> sections, String at);
  }

  /** A group with its players. */
  public record Section(String code, String said, List<DayList.Item> players) {}

  @GET
  @Transactional
  public String show() {
    Map<String, List<DayList.Item>> groups =
        list.now().items().stream()
            .collect(
                Collectors.groupingBy(
                    DayList.Item::group, LinkedHashMap::new, Collectors.toList()));
    List<Section> sections =
        groups.values().stream()
            .map(
                items -> {
                  DayList.Item first = items.getFirst();
                  return new Section(first.group(), first.groupSaid(), items);
                })
            .toList();
    return Templates.list(sections, hour(sections)).render();
  }

  /** At the field of whoever comes first. */
  private String hour(List<Section> sections) {
    String field = sections.isEmpty() ? null : sections.getFirst().players().getFirst().field();
    return Words.time(clock.instant(), Place.zoneOf(field));
  }
}
