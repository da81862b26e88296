-- Who is signed in, browser by browser, so that a session can be ended from elsewhere and on every
-- node at once. Of what the cookie holds only the hash is kept.
create sequence sign_in_session_seq increment by 50;

create table sign_in_session (
    id           bigint                      not null primary key,
    person_id    bigint                      not null references person (id),
    secret_hash  varchar(64)                 not null,
    signed_in_at timestamp(6) with time zone not null,
    constraint sign_in_session_secret_once unique (secret_hash)
);

create index sign_in_session_of_person on sign_in_session (person_id);
create index sign_in_session_by_age on sign_in_session (signed_in_at);
