package org.tapeline.inventory.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.inventory.stock.CountForm.Row;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Counting the shelves of a place: type what is there, look at the differences, confirm. */
@Path("/stock/count")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class CountPage {
  private final Counts counts;
  private final CountForms forms;
  private final StockPolicyFile policy;
  private final Places places;
  private final Caller caller;

  CountPage(Counts counts, CountForms forms, StockPolicyFile policy, Places places, Caller caller) {
    this.counts = counts;
    this.forms = forms;
    this.policy = policy;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance count(List<Place> places, CountForm form, String wrong);

    static native TemplateInstance review(
        CountForm form, List<StockPolicy.Reason> reasons, UUID commandId, String wrong);

    static native TemplateInstance counted(String place, int lines, int differed);
  }

  @GET
  public String show(@QueryParam("place") String place, @QueryParam("book") String book) {
    boolean shown = "shown".equals(book);
    if (place == null || place.isBlank()) {
      return Templates.count(own(), new CountForm("", shown, List.of()), "").render();
    }
    counts.mayCountAt(place);
    return list(forms.blank(place, shown), "");
  }

  private String list(CountForm form, String wrong) {
    return Templates.count(own(), form, wrong).render();
  }

  private List<Place> own() {
    return places.all().stream()
        .filter(p -> caller.worksAs("warehouse") || caller.mayWorkAt(p.code()))
        .toList();
  }

  /** Back to the list, with everything that was typed. */
  @POST
  @Path("/again")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public String again(MultivaluedMap<String, String> sent) {
    CountForm form = CountForm.read(sent);
    counts.mayCountAt(form.place());
    return list(forms.merged(form), "");
  }

  /** What differs, before anything is booked. */
  @POST
  @Path("/review")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response review(MultivaluedMap<String, String> sent) {
    CountForm form = CountForm.read(sent).checked();
    counts.mayCountAt(form.place());
    if (!form.good()) {
      return Response.status(400)
          .entity(list(forms.merged(form), "Correct what is marked below."))
          .build();
    }
    if (form.filled().isEmpty()) {
      return Response.status(400)
          .entity(list(forms.merged(form), "Write what you counted, in one line or more."))
          .build();
    }
    return Response.ok(review(forms.withNow(form), "")).build();
  }

  private String review(CountForm form, String wrong) {
    return Templates.review(form, policy.inForce().countReasons(), UuidV7.next(), wrong).render();
  }

  /** Books it; what cannot be booked comes back with everything that was typed. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response confirm(MultivaluedMap<String, String> sent) {
    CountForm form = CountForm.read(sent).checked();
    List<Row> rows = form.filled();
    try {
      UUID id = CommandId.of(sent.getFirst("commandId"));
      counts.take(new CountSheet(form.place(), rows.stream().map(Row::line).toList()), id);
      int differed = (int) rows.stream().filter(r -> r.variance() != 0).count();
      return Answers.goTo(
          "/inventory/stock/count/done?place="
              + form.place()
              + "&lines="
              + rows.size()
              + "&differed="
              + differed);
    } catch (Problem problem) {
      String page = review(forms.marked(form, problem.errors()), problem.getMessage());
      return Response.status(problem.status()).entity(page).build();
    }
  }

  @GET
  @Path("/done")
  public String done(
      @QueryParam("place") String place,
      @QueryParam("lines") int lines,
      @QueryParam("differed") int differed) {
    counts.mayCountAt(place);
    return Templates.counted(place, lines, differed).render();
  }
}
