package org.tapeline.fitting.fieldapp;

import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;

/**
 * The part of the field app that keeps the rest of it on the phone. The other files are served as
 * they are; there is nothing in them about anybody, so that nobody has to be signed in.
 */
@Path("/field")
@PermitAll
public class ShellResource {
  private final Shell shell;

  ShellResource(Shell shell) {
    this.shell = shell;
  }

  @GET
  @Path("/service-worker.js")
  @Produces("text/javascript; charset=utf-8")
  public String serviceWorker() {
    return shell.serviceWorker();
  }
}
