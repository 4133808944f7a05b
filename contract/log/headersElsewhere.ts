import type { LogColumn } from './logColumns.ts';

/** What a column is called in German, French and Spanish, small letters without accents; where two agree, once. */
export const headersElsewhere: Partial<Record<LogColumn, readonly string[]>> = {
  date: list('datum, tag, trainingstag, trainingsdatum, jour, date de seance, fecha, dia'),
  lifter: list('heber, heberin, sportler, athlet, athletin, wer, nom, prenom, nombre, atleta'),
  lift: list('ubung, uebung, exercice, mouvement, ejercicio, movimiento'),
  order: list('satz, satz nr, nr, serie, serie no'),
  sets: list('satze, saetze, anzahl satze, series, nombre de series, numero de series'),
  startHeight: list('hohe, hoehe, boxhohe, hauteur, altura'),
  equipment: list('ausrustung, equipement, equipamiento'),
  bar: list('gewicht, hantelgewicht, stange, auf der stange, poids, charge, barre, peso, carga, barra'),
  rack: list('gestell'),
  bands: list('bander, gummibander, elastiques, bandas, gomas'),
  chains: list('ketten, chaines, cadenas'),
  reps: list('wdh, wiederholung, wiederholungen, repeticiones, nombre de repetitions'),
  made: list('geschafft, wdh geschafft, erfolg, gelungen, reussi, reussite, exito, hecho'),
  meanSpeeds: list('geschwindigkeit, vitesse, vitesse moyenne, velocidad, velocidad media'),
  peakSpeeds: list('spitzengeschwindigkeit, vitesse maximale, velocidad maxima'),
  effort: list('anstrengung, esfuerzo'),
  rest: list('satzpause, pausenzeit, repos, descanso'),
  bodyMass: list('korpergewicht, koerpergewicht, poids du corps, poids de corps, peso corporal'),
  platform: list('wettkampf, concours, competicion'),
  place: list('ort, lieu, lugar'),
  note: list('notiz, notizen, bemerkung, bemerkungen, kommentar, remarque, commentaire, notas, comentarios'),
};

function list(words: string): string[] {
  return words.split(', ');
}
