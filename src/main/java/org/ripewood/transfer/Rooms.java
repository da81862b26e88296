package org.ripewood.transfer;

import jakarta.inject.Singleton;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.assess.Assessments;
import org.ripewood.course.CourseContent;
import org.ripewood.materials.Materials;
import org.ripewood.people.Courses;
import org.ripewood.photos.Photos;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.records.Wounds;
import org.ripewood.school.Schools;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.Standings;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;

@Singleton
class Rooms {

    final Trees trees;

    final TreeSites treeSites;

    final Wounds wounds;

    final Observations observations;

    final Branches branches;

    final Containers containers;

    final WorksDone worksDone;
    final Aftercare aftercare;
    final Courses courses;
    final PersonRegistration register;
    final Schools school;
    final Assessments assessments;
    final Sessions sessions;
    final Materials materials;
    final Photos photos;
    final Reports reports;
    final SignOffs signOffs;
    final Assigner assigner;
    final Standings standings;
    final CourseContent content;
    private final Inputs inputs;

    Rooms(
            Trees trees,
            TreeSites treeSites,
            Wounds wounds,
            Observations observations,
            Branches branches,
            Containers containers,
            WorksDone worksDone,
            Aftercare aftercare,
            Courses courses,
            PersonRegistration register,
            Schools school,
            Assessments assessments,
            Sessions sessions,
            Materials materials,
            Photos photos,
            Reports reports,
            SignOffs signOffs,
            Assigner assigner,
            Standings standings,
            CourseContent content,
            Inputs inputs) {
        this.trees = trees;
        this.treeSites = treeSites;
        this.wounds = wounds;
        this.observations = observations;
        this.branches = branches;
        this.containers = containers;
        this.worksDone = worksDone;
        this.aftercare = aftercare;
        this.courses = courses;
        this.register = register;
        this.school = school;
        this.assessments = assessments;
        this.sessions = sessions;
        this.materials = materials;
        this.photos = photos;
        this.reports = reports;
        this.signOffs = signOffs;
        this.assigner = assigner;
        this.standings = standings;
        this.content = content;
        this.inputs = inputs;
    }

    /** The input itself when it keeps the bounds written on it. */
    <T> T checked(T input) {
        return inputs.check(input);
    }
}
