package org.tapeline.notify.text;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * Where the gateway says what became of a text message. It has no log-in: the signature is proof of
 * who speaks. An answer other than 2xx tells the gateway to come again, but for 401 and 409.
 */
@Path("/hooks/text")
@PermitAll
@RunOnVirtualThread
public class TextHook {
  private static final int LONGEST = 16 * 1024;

  private final TextSettings settings;
  private final Receipts receipts;
  private final Optional<Signatures> signatures;
  private final Clock clock;

  TextHook(TextSettings settings, Receipts receipts, Clock clock) {
    this.settings = settings;
    this.receipts = receipts;
    this.signatures = settings.signingKey().map(Signatures::new);
    this.clock = clock;
  }

  @POST
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "A signed delivery receipt of the text gateway")
  public Response take(@Context HttpHeaders headers, byte[] body) {
    String signature = header(headers, settings.headers().signature());
    if (!genuine(headers, body, signature)) {
      throw new Problem(
          401,
          "not-genuine",
          "Not let in",
          "The signature does not fit, or the time stamp is older than "
              + settings.receipts().window().toMinutes()
              + " minutes. Check the signing key and the clock.",
          List.of());
    }
    return switch (receipts.take(read(body), signature)) {
      case DONE -> Response.noContent().build();
      case SEEN -> throw Problem.conflict("seen-before", "This very receipt was taken before.");
      case UNKNOWN ->
          throw Problem.notFound("There is no such text message, or not yet. Come again later.");
    };
  }

  private boolean genuine(HttpHeaders headers, byte[] body, String signature) {
    String seconds = header(headers, settings.headers().timestamp());
    return body.length <= LONGEST
        && Signatures.fresh(seconds, clock.instant(), settings.receipts().window())
        && signatures.filter(s -> s.genuine(seconds, body, signature)).isPresent();
  }

  private Receipt read(byte[] body) {
    try {
      return Receipt.read(body, settings.receipts()).orElseThrow(TextHook::notUnderstood);
    } catch (IOException e) {
      throw notUnderstood();
    }
  }

  private static Problem notUnderstood() {
    return Problem.badRequest(
        "no-receipt", "A receipt names its message and a status, as JSON or as a form.");
  }

  private static String header(HttpHeaders headers, String name) {
    String value = headers.getHeaderString(name);
    return value == null ? "" : value;
  }
}
