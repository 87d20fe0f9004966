package org.leverbook.session;

import java.util.Map;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** Hands one engine to the compiler side. */
record EngineProvider(Engine engine) implements ExecutionControlProvider {

  @Override
  public String name() {
    return "leverbook";
  }

  @Override
  public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
    return engine;
  }
}
