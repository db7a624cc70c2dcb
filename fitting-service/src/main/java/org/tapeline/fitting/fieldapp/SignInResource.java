package org.tapeline.fitting.fieldapp;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.tapeline.journal.quarkus.http.Answers;

/** Whoever comes here has to sign in, and is then led to the field app. */
@Path("/field-app")
@RolesAllowed({"fitter", "equipment-manager"})
public class SignInResource {

  @GET
  public Response toTheApp() {
    return Answers.goTo("/fitting/field/");
  }
}
