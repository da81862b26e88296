package org.ripewood.platform.http;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import org.ripewood.platform.problems.Problem;

/** The page that tells a person what was refused and why. */
@CheckedTemplate(basePath = "ProblemPages")
final class ProblemPages {

    private ProblemPages() {}

    static native TemplateInstance problem(Problem problem);
}
