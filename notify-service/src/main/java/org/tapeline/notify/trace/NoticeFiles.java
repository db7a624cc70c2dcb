package org.tapeline.notify.trace;

import com.fasterxml.jackson.core.JsonGenerator;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.http.Problem;

/** Notices as files: all that a filter finds, or all that is known of one. No words, no names. */
@Path("/files/notices")
@RolesAllowed("equipment-manager")
@Blocking
public class NoticeFiles {
  private static final String CSV = "text/csv; charset=utf-8; header=present";
  private static final List<String> MOMENTS =
      List.of("at", "sort", "what", "detail", "service", "event");

  private final NoticeLines lines;
  private final Traces traces;

  NoticeFiles(NoticeLines lines, Traces traces) {
    this.lines = lines;
    this.traces = traces;
  }

  @GET
  @Path("/notices.csv")
  public Response csv(@Context UriInfo asked) {
    NoticeFilter filter = filter(asked);
    StreamingOutput body =
        out -> {
          try (CsvWriter csv = new CsvWriter(out, NoticeLine.HEADER)) {
            lines.each(filter, line -> csv.row(line.cells()));
          }
        };
    return file("notices.csv", CSV, body);
  }

  @GET
  @Path("/notices.json")
  public Response json(@Context UriInfo asked) {
    NoticeFilter filter = filter(asked);
    StreamingOutput body =
        out -> {
          try (JsonGenerator json = EventJson.MAPPER.createGenerator(out)) {
            json.writeStartArray();
            lines.each(filter, line -> write(json, line));
            json.writeEndArray();
          }
        };
    return file("notices.json", MediaType.APPLICATION_JSON, body);
  }

  @GET
  @Path("/{notice}.json")
  public Response oneAsJson(@PathParam("notice") UUID notice) {
    Trace trace = trace(notice);
    return file(
        "notice.json",
        MediaType.APPLICATION_JSON,
        out -> EventJson.MAPPER.writerWithDefaultPrettyPrinter().writeValue(out, trace));
  }

  @GET
  @Path("/{notice}.csv")
  public Response oneAsCsv(@PathParam("notice") UUID notice) {
    List<Moment> moments = Timeline.of(trace(notice));
    StreamingOutput body =
        out -> {
          try (CsvWriter csv = new CsvWriter(out, MOMENTS)) {
            moments.forEach(
                m ->
                    csv.row(
                        Arrays.asList(
                            m.at(), m.sort(), m.what(), m.detail(), m.service(), m.id())));
          }
        };
    return file("notice.csv", CSV, body);
  }

  private NoticeFilter filter(UriInfo asked) {
    return FilterForm.of(asked.getQueryParameters()).filterOrRefuse(lines.zone());
  }

  private Trace trace(UUID notice) {
    return traces
        .of(notice)
        .orElseThrow(() -> Problem.notFound("There is no such notice. Look in the list."));
  }

  private static void write(JsonGenerator json, NoticeLine line) {
    try {
      json.writePOJO(line);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Response file(String name, String type, StreamingOutput body) {
    return Response.ok(body)
        .header(HttpHeaders.CONTENT_TYPE, type)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
        .build();
  }
}
