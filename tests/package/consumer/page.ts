// What a page with a bundler writes; compiled and bundled against the packed package by the tests.
import { planWeek } from 'weekwright/core';
import 'weekwright/define.js';

const outcome = planWeek({ hours: 4, phase: 'build' });
const minutes: number = outcome.ok ? outcome.value.rounded.strength : 0;

// @ts-expect-error: hours are a number, so the types are there and are not `any`
planWeek({ hours: 'four' });

const planner = document.querySelector('weekwright-planner');
if (planner) planner.hours = minutes / 60;
