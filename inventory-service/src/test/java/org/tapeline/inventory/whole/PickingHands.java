package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.stateOfRequest;

import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Somebody with a pick list between the shelves of a depot. */
record PickingHands(String depot) {

  /** Prints the list, taps the row, puts it back, taps it again and is done. */
  void picks(String request) {
    assertThat(paper()).contains("Pick list: " + depot, "Straps", "Chin strap small");
    assertThat(done().statusCode()).as("nothing is taken yet").isEqualTo(409);
    UUID tap = UUID.randomUUID();
    tap(request, true, tap);
    tap(request, true, tap);
    assertThat(list()).contains("1 of 1 taken", "aria-pressed=\"true\"");
    tap(request, false, UUID.randomUUID());
    assertThat(list()).contains("0 of 1 taken");
    tap(request, true, UUID.randomUUID());
    assertThat(stateOfRequest(request)).isEqualTo("REQUESTED");
    assertThat(done().statusCode()).isEqualTo(303);
    assertThat(stateOfRequest(request)).isEqualTo("PICKED");
    assertThat(list()).doesNotContain(request);
  }

  private String list() {
    return as("depot")
        .queryParam("from", depot)
        .get("/restock/picklist")
        .then()
        .statusCode(200)
        .extract()
        .asString();
  }

  private void tap(String request, boolean taken, UUID id) {
    as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", id)
        .formParam("from", depot)
        .formParam("taken", taken)
        .post("/restock/picklist/" + request)
        .then()
        .statusCode(303);
  }

  private Response done() {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("from", depot)
        .post("/restock/picklist/done");
  }

  private String paper() {
    Response paper = as("depot").queryParam("from", depot).get("/restock/picklist/paper.pdf");
    assertThat(paper.contentType()).isEqualTo("application/pdf");
    try (PDDocument pdf = Loader.loadPDF(paper.asByteArray())) {
      return new PDFTextStripper().getText(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
