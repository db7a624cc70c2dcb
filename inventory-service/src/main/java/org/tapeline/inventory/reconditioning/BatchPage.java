package org.tapeline.inventory.reconditioning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** One batch: ticked off, sent and taken back with a phone in the hand, and on paper. */
@Path("/reconditioning/{batch:[0-9a-f-]+}")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class BatchPage {
  private static final String HOME = "/inventory/reconditioning";

  private final BatchStore store;
  private final BatchCommands commands;
  private final PolicyOnFile policy;
  private final Places places;

  BatchPage(BatchStore store, BatchCommands commands, PolicyOnFile policy, Places places) {
    this.store = store;
    this.commands = commands;
    this.policy = policy;
    this.places = places;
  }

  @CheckedTemplate(basePath = "reconditioning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance batch(BatchView view);

    static native TemplateInstance sheet(BatchView view, boolean packing);
  }

  @GET
  public String show(@PathParam("batch") UUID batch) {
    return page(batch, Said.nothing(policy.get()));
  }

  private String page(UUID batch, Said said) {
    return Templates.batch(view(batch, said)).render();
  }

  private BatchView view(UUID batch, Said said) {
    return new BatchView(
        store.known(batch),
        store.lines(batch),
        places.all(),
        policy.get().currency(),
        said,
        UuidV7.next());
  }

  /** The packing list, or what is filled in when they come back. */
  @GET
  @Path("/sheet")
  public String sheet(@PathParam("batch") UUID batch, @QueryParam("for") String what) {
    return Templates.sheet(view(batch, Said.nothing(policy.get())), !"return".equals(what))
        .render();
  }

  @POST
  @Path("/{step:pack|unpack|add|remove|give-up|send|close}")
  public Response step(
      @PathParam("batch") UUID batch,
      @PathParam("step") String step,
      @RestForm String commandId,
      @RestForm String tag) {
    String typed = tag == null ? "" : tag.strip();
    try {
      UUID id = CommandId.of(commandId);
      switch (step) {
        case "pack" -> commands.pack(batch, List.of(typed), true, id);
        case "unpack" -> commands.pack(batch, List.of(typed), false, id);
        case "add" -> commands.add(batch, typed, id);
        case "remove" -> commands.remove(batch, typed, id);
        case "give-up" -> commands.giveUp(batch, id);
        case "send" -> commands.send(batch, id);
        default -> commands.close(batch, id);
      }
      return Answers.goTo(step.equals("give-up") ? HOME : HOME + "/" + batch);
    } catch (Problem problem) {
      return refused(batch, problem, Said.nothing(policy.get()).typed(typed));
    }
  }

  /**
   * @param which {@code all} for everything that is out
   */
  @POST
  @Path("/receive")
  public Response receive(
      @PathParam("batch") UUID batch,
      @RestForm String commandId,
      @RestForm String which,
      @RestForm String tag,
      @RestForm List<String> tags,
      @RestForm String outcome,
      @RestForm String certifiedUntil,
      @RestForm String cost,
      @RestForm String place) {
    List<String> came = new ArrayList<>(tags == null ? List.of() : tags);
    if (tag != null && !tag.isBlank()) {
      came.add(tag.strip());
    }
    boolean all = "all".equals(which);
    Receipt receipt = new Receipt(outcome, certifiedUntil, cost, place, all ? List.of() : came);
    try {
      if (came.isEmpty() && !all) {
        throw Drafts.wrong("tag", "Tick the helmets that came, or scan or type a tag.");
      }
      commands.receive(batch, receipt, CommandId.of(commandId));
      return Answers.goTo(HOME + "/" + batch);
    } catch (Problem problem) {
      return refused(batch, problem, new Said(receipt, tag == null ? "" : tag, "", List.of()));
    }
  }

  private Response refused(UUID batch, Problem problem, Said said) {
    return Response.status(problem.status())
        .entity(page(batch, said.with(problem.getMessage(), problem.errors())))
        .build();
  }
}
