import * as fc from 'fast-check';

/** A mutant is caught by the first case that fails: nobody reads the smallest one, which takes long to find. */
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
