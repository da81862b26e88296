package org.ripewood.api;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** The table itself. */
final class RoleTable {

    /**
     * Columns: anonymous; the student, another student; the course's instructor, another
     * instructor; the registrar.
     */
    private static final String ROWS =
            """
            GET  /api/v1/trees                                | 401 | 200 200 | 200 200 | 200
            POST /api/v1/trees                                | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}                           | 401 | 200 404 | 200 404 | 200
            PUT  /api/v1/trees/{id}                           | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/hand-over                 | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/leave                     | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/departures                | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/earlier-words             | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/life                      | 401 | 200 404 | 200 404 | 200
            GET  /trees/{id}/life                             | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/papers                           | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/record                           | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/techniques                       | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/leave                            | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/leave                            | 303 | 303 404 | 303 404 | 303
            GET  /trees                                       | 303 | 200 200 | 200 200 | 200
            GET  /trees/list.csv                              | 303 | 200 200 | 200 200 | 200
            GET  /search                                      | 303 | 200 200 | 200 200 | 200
            GET  /api/v1/search                               | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/search/{kind}                        | 401 | 200 200 | 200 200 | 200
            GET  /catalogue                                   | 303 | 200 200 | 200 200 | 200
            GET  /glossary                                    | 303 | 200 200 | 200 200 | 200
            GET  /techniques/{code}                           | 303 | 200 200 | 200 200 | 200
            GET  /species/{code}                              | 303 | 200 200 | 200 200 | 200
            GET  /rubrics/{code}                              | 303 | 200 200 | 200 200 | 200
            GET  /people/{id}                                 | 303 | 200 404 | 200 404 | 200
            GET  /courses/{id}/about                          | 303 | 200 404 | 200 404 | 200
            GET  /trees/left                                  | 303 | 200 200 | 200 200 | 200
            GET  /trees/{id}/hand-over                        | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/hand-over                        | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/change                           | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/change                           | 303 | 303 404 | 303 404 | 303
            GET  /api/v1/trees/{id}/observations              | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/observations              | 401 | 201 404 | 201 404 | 201
            POST /api/v1/trees/{id}/series                    | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}/wounds                    | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/wounds                    | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}/wounds/{woundId}/closing  | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/trunk                     | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/branches                  | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/branches                  | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}/containers                | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/containers                | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}/works                     | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/works                     | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/trees/{id}/photos                    | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/photos                    | 401 | 201 404 | 201 404 | 201
            GET  /api/v1/photos/{id}                          | 401 | 200 404 | 200 404 | 200
            PUT  /api/v1/photos/{id}                          | 401 | 200 404 | 200 404 | 403
            DELETE /api/v1/photos/{id}                        | 401 | 200 404 | 200 404 | 403
            GET  /api/v1/trees/{id}/standing                  | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/proposals                 | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/trees/{id}/checklist                 | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/first-look                | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/aftercare                 | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/aftercare/{task}/done       | 401 | 200 404 | 200 404 | 403
            POST /api/v1/trees/{id}/aftercare/{task}/not-needed | 401 | 200 404 | 200 404 | 403
            POST /api/v1/trees/{id}/aftercare/{task}/taken-back | 401 | 200 404 | 200 404 | 403
            GET  /api/v1/trees/{id}/route                     | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/judgements                | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/judgements                | 401 | 403 403 | 201 404 | 403
            GET  /api/v1/people/{id}/judgements               | 401 | 200 404 | 200 404 | 200
            POST /api/v1/people/{id}/judgements               | 401 | 403 403 | 201 404 | 403
            GET  /api/v1/judgements/{id}                      | 401 | 404 404 | 200 404 | 404
            PUT  /api/v1/judgements/{id}                      | 401 | 403 403 | 200 404 | 403
            DELETE /api/v1/judgements/{id}                    | 401 | 403 403 | 200 404 | 403
            POST /api/v1/judgements/{id}/signature            | 401 | 403 403 | 200 404 | 403
            POST /api/v1/judgements/{id}/opening              | 401 | 403 403 | 200 404 | 403
            GET  /api/v1/agreement                            | 401 | 403 403 | 200 200 | 200
            GET  /api/v1/content/rubrics                      | 401 | 200 200 | 200 200 | 200
            GET  /trees/{id}/judgements                       | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/judgements/{rubric}              | 303 | 403 403 | 200 404 | 403
            POST /trees/{id}/judgements/{rubric}              | 303 | 403 403 | 303 404 | 403
            GET  /students/{id}/judgements                    | 303 | 200 404 | 200 404 | 200
            GET  /students/{id}/judgements/{rubric}           | 303 | 403 403 | 200 404 | 403
            POST /students/{id}/judgements/{rubric}           | 303 | 403 403 | 303 404 | 403
            POST /judgements/{id}/discard                     | 303 | 403 403 | 303 404 | 403
            POST /judgements/{id}/sign                        | 303 | 403 403 | 303 404 | 403
            POST /judgements/{id}/open                        | 303 | 403 403 | 303 404 | 403
            GET  /agreement                                   | 303 | 403 403 | 200 200 | 200
            GET  /api/v1/trees/{id}/steps                     | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/steps                     | 401 | 403 403 | 201 404 | 403
            POST /api/v1/trees/{id}/found-done                | 401 | 403 403 | 201 404 | 403
            GET  /api/v1/steps/{id}                           | 401 | 200 404 | 200 404 | 200
            POST /api/v1/steps/{id}/report                    | 401 | 200 404 | 200 404 | 403
            POST /api/v1/steps/{id}/sign-off                  | 401 | 403 403 | 200 404 | 403
            POST /api/v1/steps/{id}/send-back                 | 401 | 403 403 | 200 404 | 403
            POST /api/v1/steps/{id}/withdraw                  | 401 | 403 403 | 200 404 | 403
            GET  /api/v1/decisions/{id}                       | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/courses                              | 401 | 200 200 | 200 200 | 200
            POST /api/v1/courses                              | 401 | 403 403 | 403 403 | 201
            GET  /api/v1/courses/{id}                         | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/courses/{id}/board                   | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/courses/{id}/readiness               | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/courses/{id}/lessons-next            | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/people/{id}/lessons-next             | 401 | 200 404 | 200 404 | 200
            GET  /api/v1/courses/{id}/weeks                   | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/courses/{id}/members                 | 401 | 403 403 | 200 404 | 200
            POST /api/v1/courses/{id}/members                 | 401 | 403 403 | 403 403 | 201
            DELETE /api/v1/courses/{id}/members/{person}      | 401 | 403 403 | 403 403 | 200
            POST /api/v1/courses/{id}/runs                    | 401 | 403 403 | 403 403 | 201
            GET  /api/v1/courses/{id}/sessions                | 401 | 200 404 | 200 404 | 200
            POST /api/v1/sessions                             | 401 | 403 403 | 201 404 | 201
            GET  /api/v1/trees/{id}/asks                      | 401 | 200 404 | 200 404 | 200
            POST /api/v1/trees/{id}/asks                      | 401 | 201 404 | 403 404 | 403
            POST /api/v1/trees/{id}/asks/{ask}/answer         | 401 | 403 403 | 200 404 | 403
            DELETE /api/v1/trees/{id}/asks/{ask}              | 401 | 200 404 | 403 404 | 403
            GET  /trees/{id}/asks                             | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/asks                             | 303 | 303 404 | 403 404 | 403
            POST /trees/{id}/asks/{askId}/answer              | 303 | 403 403 | 303 404 | 403
            POST /trees/{id}/asks/{askId}/take-back           | 303 | 303 404 | 403 404 | 403
            POST /steps/{id}/report-with-photos               | 303 | 303 404 | 303 404 | 403
            POST /api/v1/courses/{id}/steps                   | 401 | 403 403 | 200 404 | 403
            POST /api/v1/courses/{id}/observations            | 401 | 403 403 | 200 404 | 200
            POST /api/v1/courses/{id}/sign-offs               | 401 | 403 403 | 200 404 | 403
            POST /api/v1/courses/{id}/sessions                | 401 | 403 403 | 201 404 | 201
            POST /api/v1/sessions/{id}/move                   | 401 | 403 403 | 200 404 | 200
            POST /api/v1/sessions/{id}/enrolments/many        | 401 | 403 403 | 200 404 | 200
            DELETE /api/v1/sessions/{id}/waiting/{wait}       | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/sessions/{id}                        | 401 | 200 404 | 200 404 | 200
            POST /api/v1/sessions/{id}/enrolments             | 401 | 403 403 | 201 404 | 201
            DELETE /api/v1/sessions/{id}/enrolments/{enrolment} | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/sessions/{id}/attendance             | 401 | 200 404 | 200 404 | 200
            PUT  /api/v1/sessions/{id}/attendance             | 401 | 403 403 | 200 404 | 200
            POST /api/v1/sessions/{id}/cancellation           | 401 | 403 403 | 200 404 | 200
            POST /api/v1/sessions/{id}/wishes                 | 401 | 403 403 | 200 404 | 200
            POST /api/v1/sessions/{id}/timetables             | 401 | 403 403 | 201 404 | 201
            GET  /api/v1/sessions/{id}/plan                   | 401 | 403 403 | 200 404 | 200
            GET  /api/v1/record                               | 401 | 403 403 | 403 403 | 200
            POST /api/v1/record                               | 401 | 403 403 | 403 403 | 201
            POST /api/v1/backups                              | 401 | 403 403 | 403 403 | 409
            POST /record/backup                               | 303 | 403 403 | 403 403 | 409
            GET  /api/v1/record-schema                        | 200 | 200 200 | 200 200 | 200
            GET  /api/v1/courses/{id}/record                  | 401 | 403 404 | 200 404 | 200
            GET  /api/v1/trees/{id}/record                    | 401 | 200 404 | 200 404 | 200
            GET  /record                                      | 303 | 403 403 | 403 403 | 200
            POST /record                                      | 303 | 403 403 | 403 403 | 400
            POST /record/confirmation                         | 303 | 403 403 | 403 403 | 303
            GET  /api/v1/sites                                | 401 | 200 200 | 200 200 | 200
            POST /api/v1/sites                                | 401 | 403 403 | 201 201 | 201
            GET  /api/v1/sites/{id}                           | 401 | 404 404 | 200 200 | 200
            PUT  /api/v1/sites/{id}                           | 401 | 403 403 | 200 200 | 200
            POST /api/v1/sites/{id}/readings                  | 401 | 403 403 | 200 200 | 200
            GET  /api/v1/sites/{id}/season                    | 401 | 404 404 | 200 200 | 200
            GET  /api/v1/stock                                | 401 | 403 403 | 200 200 | 200
            GET  /api/v1/stock/{id}                           | 401 | 403 403 | 200 200 | 200
            GET  /api/v1/stock/{id}/movements                 | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/{id}/movements                 | 401 | 403 403 | 201 201 | 201
            POST /api/v1/stock/containers                     | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/containers/{id}                | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/substrates                     | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/substrates/{id}                | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/mixes                          | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/mixes/{id}                     | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/wires                          | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/wires/{id}                     | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/tools                          | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/tools/{id}                     | 401 | 403 403 | 200 200 | 200
            POST /api/v1/stock/supplies                       | 401 | 403 403 | 201 201 | 201
            PUT  /api/v1/stock/supplies/{id}                  | 401 | 403 403 | 200 200 | 200
            GET  /api/v1/lists/{kind}                         | 401 | 403 403 | 200 200 | 200
            POST /api/v1/lists/{kind}                         | 401 | 403 403 | 200 200 | 200
            GET  /lists                                       | 303 | 403 403 | 200 200 | 200
            POST /lists                                       | 303 | 403 403 | 200 200 | 200
            GET  /api/v1/people/me                            | 401 | 200 200 | 200 200 | 200
            POST /api/v1/people/me/confirmation               | 401 | 200 200 | 200 200 | 200
            POST /api/v1/people                               | 401 | 403 403 | 403 403 | 201
            POST /api/v1/people/invitations                   | 401 | 403 403 | 403 403 | 201
            POST /api/v1/people/{id}/password-link            | 401 | 403 403 | 403 403 | 201
            GET  /api/v1/people/{id}/roles                    | 401 | 403 403 | 403 403 | 200
            PUT  /api/v1/people/{id}/roles                    | 401 | 403 403 | 403 403 | 200
            POST /api/v1/people/{id}/sign-out                 | 401 | 403 403 | 403 403 | 200
            POST /api/v1/people/{id}/second-factor/reset      | 401 | 403 403 | 403 403 | 200
            GET  /api/v1/people/{id}/record                   | 401 | 200 404 | 404 404 | 200
            GET  /api/v1/people/{id}/forgetting               | 401 | 403 403 | 403 403 | 200
            POST /api/v1/people/{id}/forget                   | 401 | 403 403 | 403 403 | 200
            GET  /people/{id}/forget                          | 303 | 403 403 | 403 403 | 200
            POST /people/{id}/forget                          | 303 | 403 403 | 403 403 | 303
            GET  /api/v1/people/{id}/skills                   | 401 | 200 404 | 200 404 | 200
            POST /api/v1/people/{id}/skills                   | 401 | 403 403 | 201 404 | 403
            GET  /api/v1/school                               | 401 | 200 200 | 200 200 | 200
            PUT  /api/v1/school                               | 401 | 403 403 | 403 403 | 200
            GET  /school                                      | 303 | 403 403 | 403 403 | 200
            POST /school                                      | 303 | 403 403 | 403 403 | 303
            GET  /sample-course                               | 303 | 403 403 | 403 403 | 200
            POST /sample-course                               | 303 | 403 403 | 403 403 | 409
            POST /sample-course/throw-away                    | 303 | 403 403 | 403 403 | 303
            GET  /api/v1/sample-course                        | 401 | 403 403 | 403 403 | 200
            POST /api/v1/sample-course                        | 401 | 403 403 | 403 403 | 409
            DELETE /api/v1/sample-course                      | 401 | 403 403 | 403 403 | 200
            GET  /api/v1/audit                                | 401 | 403 403 | 403 403 | 200
            GET  /api/v1/content                              | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/techniques                   | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/techniques/{code}            | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/species                      | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/species/{code}               | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/lessons                      | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/lessons/{code}               | 401 | 200 200 | 200 200 | 200
            GET  /api/v1/content/facts                        | 401 | 200 200 | 200 200 | 200
            POST /api/v1/content/renew                        | 401 | 403 403 | 200 200 | 200
            GET  /                                            | 303 | 303 303 | 303 303 | 303
            GET  /sign-in                                     | 200 | 200 200 | 200 200 | 200
            GET  /sign-in/code                                | 200 | 200 200 | 200 200 | 200
            POST /sign-out                                    | 303 | 303 303 | 303 303 | 303
            GET  /set-up                                      | 303 | 303 303 | 303 303 | 303
            POST /set-up                                      | 409 | 409 409 | 409 409 | 409
            GET  /home                                        | 303 | 200 200 | 200 200 | 200
            GET  /account                                     | 303 | 200 200 | 200 200 | 200
            POST /account/password                            | 303 | 400 400 | 400 400 | 400
            POST /account/sign-out-everywhere                 | 303 | 303 303 | 303 303 | 303
            GET  /password/forgotten                          | 200 | 200 200 | 200 200 | 200
            POST /password/forgotten                          | 200 | 200 200 | 200 200 | 200
            GET  /password/{secret}                           | 200 | 200 200 | 200 200 | 200
            POST /password/{secret}                           | 303 | 303 303 | 303 303 | 303
            POST /account/tokens                              | 303 | 200 200 | 200 200 | 200
            GET  /account/second-factor                       | 303 | 200 200 | 200 200 | 200
            POST /account/second-factor/begin                 | 303 | 200 200 | 200 200 | 200
            POST /account/second-factor/on                    | 303 | 400 400 | 400 400 | 400
            POST /account/second-factor/sheet                 | 303 | 409 409 | 409 409 | 409
            POST /account/second-factor/off                   | 303 | 409 409 | 409 409 | 409
            POST /account/sessions/{id}/end                   | 303 | 303 404 | 404 404 | 404
            POST /account/tokens/{id}/end                     | 303 | 303 404 | 404 404 | 404
            POST /account/calendar                            | 303 | 200 200 | 200 200 | 200
            POST /account/calendar/revoke                     | 303 | 303 303 | 303 303 | 303
            GET  /calendar/{file}                             | 200 | 200 200 | 200 200 | 200
            GET  /help                                        | 303 | 200 200 | 200 200 | 200
            GET  /help/{topic}                                | 303 | 200 200 | 200 200 | 200
            GET  /lessons                                     | 303 | 200 200 | 200 200 | 200
            GET  /lessons/pictures/{file}                     | 303 | 200 200 | 200 200 | 200
            GET  /lessons/{code}                              | 303 | 200 200 | 200 200 | 200
            GET  /content/species/{code}/season               | 303 | 200 200 | 200 200 | 200
            GET  /content/species/{code}/season/print         | 303 | 200 200 | 200 200 | 200
            GET  /content/species/{code}/season.pdf           | 303 | 200 200 | 200 200 | 200
            GET  /content                                     | 303 | 403 403 | 200 200 | 200
            POST /content/renew                               | 303 | 403 403 | 200 200 | 200
            GET  /trees/new                                   | 303 | 200 200 | 200 200 | 200
            POST /trees                                       | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}                                  | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/wounds                           | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/wounds/{woundId}                 | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/branches                         | 303 | 303 404 | 303 404 | 303
            POST /trees/{id}/containers                       | 303 | 303 404 | 303 404 | 303
            POST /trees/{id}/works                            | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/photos                           | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/photos                           | 303 | 303 404 | 303 404 | 303
            GET  /photos/{id}                                 | 303 | 200 404 | 200 404 | 200
            GET  /photos/{id}/thumbnail                       | 303 | 200 404 | 200 404 | 200
            GET  /photos/{id}/about                           | 303 | 200 404 | 200 404 | 200
            POST /photos/{id}/about                           | 303 | 303 404 | 303 404 | 403
            POST /photos/{id}/remove                          | 303 | 303 404 | 303 404 | 403
            GET  /trees/{id}/observations                     | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/observations                     | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/measure                          | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/measure                          | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/first-look                       | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/first-look                       | 303 | 303 404 | 303 404 | 303
            GET  /trees/{id}/aftercare                        | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/aftercare/{task}/done            | 303 | 303 404 | 303 404 | 403
            POST /trees/{id}/aftercare/{task}/not-needed      | 303 | 303 404 | 303 404 | 403
            POST /trees/{id}/aftercare/{task}/taken-back      | 303 | 303 404 | 303 404 | 403
            GET  /trees/{id}/checklist                        | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/checklist/print                  | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/route                            | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/route/print                      | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/checklist.pdf                    | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/route.pdf                        | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/card                             | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/card.pdf                         | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/passport                         | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/passport.pdf                     | 303 | 200 404 | 200 404 | 200
            GET  /trees/{id}/techniques/{code}                | 303 | 200 404 | 200 404 | 200
            POST /trees/{id}/steps                            | 303 | 403 403 | 303 404 | 403
            POST /trees/{id}/found-done                       | 303 | 403 403 | 303 404 | 403
            GET  /steps/{id}                                  | 303 | 200 404 | 200 404 | 200
            POST /steps/{id}/report                           | 303 | 303 404 | 303 404 | 403
            POST /steps/{id}/sign-off                         | 303 | 403 403 | 303 404 | 403
            POST /steps/{id}/send-back                        | 303 | 403 403 | 303 404 | 403
            POST /steps/{id}/withdraw                         | 303 | 403 403 | 303 404 | 403
            GET  /decisions/{id}                              | 303 | 200 404 | 200 404 | 200
            GET  /courses/{id}                                | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/board.csv                      | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/readiness.csv                  | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/readiness                      | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/readiness.pdf                  | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/next                           | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/again                          | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/people                         | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/sessions                       | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/weeks                          | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/trees/act                      | 303 | 403 403 | 200 404 | 200
            POST /courses/{id}/trees/steps                    | 303 | 403 403 | 303 404 | 403
            POST /courses/{id}/trees/facts                    | 303 | 403 403 | 303 404 | 303
            POST /courses/{id}/trees/sign-offs                | 303 | 403 403 | 303 404 | 403
            GET  /courses/{id}/series                         | 303 | 403 403 | 200 404 | 200
            POST /courses/{id}/series                         | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/move                          | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/enrolments/many               | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/waiting/{waitId}/withdraw     | 303 | 403 403 | 303 404 | 303
            POST /courses/{id}/sessions                       | 303 | 403 403 | 303 404 | 303
            GET  /sessions/{id}                               | 303 | 200 404 | 200 404 | 200
            GET  /sessions/{id}/day                           | 303 | 403 403 | 200 404 | 200
            POST /sessions/{id}/day/wishes                    | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/day/timetable                 | 303 | 403 403 | 303 404 | 303
            GET  /sessions/{id}/plan                          | 303 | 403 403 | 200 404 | 200
            POST /sessions/{id}/attendance                    | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/cancellation                  | 303 | 403 403 | 303 404 | 303
            GET  /courses/{id}/cards                          | 303 | 403 403 | 200 404 | 200
            GET  /courses/{id}/cards.pdf                      | 303 | 403 403 | 200 404 | 200
            GET  /sessions/{id}/plan.pdf                      | 303 | 403 403 | 200 404 | 200
            POST /sessions/{id}/enrolments                    | 303 | 403 403 | 303 404 | 303
            POST /sessions/{id}/enrolments/{enrolmentId}/withdraw | 303 | 403 403 | 303 404 | 303
            GET  /audit                                       | 303 | 403 403 | 403 403 | 200
            GET  /people                                      | 303 | 403 403 | 403 403 | 200
            POST /people                                      | 303 | 403 403 | 403 403 | 303
            POST /people/invitations                          | 303 | 403 403 | 403 403 | 200
            GET  /people/many                                 | 303 | 403 403 | 403 403 | 200
            POST /people/many                                 | 303 | 403 403 | 403 403 | 200
            POST /people/many/look                            | 303 | 403 403 | 403 403 | 200
            POST /people/{id}/password-link                   | 303 | 403 403 | 403 403 | 200
            POST /people/{id}/sign-out                        | 303 | 403 403 | 403 403 | 303
            POST /people/sign-out                             | 303 | 403 403 | 403 403 | 303
            POST /people/{id}/second-factor/reset             | 303 | 403 403 | 403 403 | 303
            GET  /people/{id}/roles                           | 303 | 403 403 | 403 403 | 200
            POST /people/{id}/roles                           | 303 | 403 403 | 403 403 | 303
            POST /people/{id}/active                          | 303 | 403 403 | 403 403 | 303
            POST /people/courses                              | 303 | 403 403 | 403 403 | 303
            POST /people/members/end                          | 303 | 403 403 | 403 403 | 303
            POST /people/courses/{id}/runs                    | 303 | 403 403 | 403 403 | 303
            POST /people/members                              | 303 | 403 403 | 403 403 | 303
            GET  /sites                                       | 303 | 200 200 | 200 200 | 200
            GET  /sites/new                                   | 303 | 403 403 | 200 200 | 200
            POST /sites                                       | 303 | 403 403 | 303 303 | 303
            GET  /sites/{id}                                  | 303 | 404 404 | 200 200 | 200
            POST /sites/{id}                                  | 303 | 403 403 | 303 303 | 303
            POST /sites/{id}/readings                         | 303 | 403 403 | 303 303 | 303
            GET  /stock                                       | 303 | 403 403 | 200 200 | 200
            GET  /stock/reckon                                | 303 | 403 403 | 200 200 | 200
            POST /stock/{kind}                                | 303 | 403 403 | 303 303 | 303
            GET  /stock/{id}                                  | 303 | 403 403 | 200 200 | 200
            POST /stock/{id}                                  | 303 | 403 403 | 303 303 | 303
            POST /stock/{id}/movements                        | 303 | 403 403 | 303 303 | 303
            GET  /students/{id}/skills                        | 303 | 403 403 | 200 404 | 200
            POST /students/{id}/skills                        | 303 | 403 403 | 303 404 | 403
            """;

    private RoleTable() {}

    static Map<String, Map<Who, Integer>> rows() {
        var rows = new LinkedHashMap<String, Map<Who, Integer>>();
        ROWS.lines().forEach(line -> add(rows, line));
        return rows;
    }

    private static void add(Map<String, Map<Who, Integer>> rows, String line) {
        int bar = line.indexOf('|');
        var address = line.substring(0, bar).strip().replaceAll("\\s+", " ");
        var words = line.substring(bar + 1).strip().split("[|\\s]+");
        var statuses = new EnumMap<Who, Integer>(Who.class);
        var next = Arrays.asList(words).iterator();
        for (var who : Who.values()) {
            statuses.put(who, Integer.valueOf(next.next()));
        }
        if (next.hasNext() || rows.put(address, statuses) != null) {
            throw new IllegalStateException("too much said of " + address);
        }
    }
}
