package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.List;

/** A way to tell how every technique stands for a tree on a day. */
interface Contender {

    List<Outcome> judge(Subject subject, LocalDate on);
}
