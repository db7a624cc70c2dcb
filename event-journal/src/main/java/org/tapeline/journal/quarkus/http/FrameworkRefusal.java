package org.tapeline.journal.quarkus.http;

import jakarta.ws.rs.core.Response;
import java.util.List;

/** Refusals that are decided before any code of ours runs, in words that say what to do. */
final class FrameworkRefusal {
  private FrameworkRefusal() {}

  static Problem of(Response.StatusType status) {
    int code = status.getStatusCode();
    return new Problem(code, "http-" + code, status.getReasonPhrase(), whatToDo(code), List.of());
  }

  static String whatToDo(int status) {
    return switch (status) {
      case 404 -> "There is nothing at this address. Check it.";
      case 405 -> "This address does not take that method. Check the address and the method.";
      case 406 ->
          "This is not to be had in the format that the header Accept asks for. Leave it out.";
      case 413 -> "That is more than is taken at once. Send it in parts.";
      case 415 -> "The body is of another kind than is taken here. Check the header Content-Type.";
      default ->
          "It could not be read. Check the address, the parameters, the headers and the body.";
    };
  }
}
