# A table: one message an exercise. Titles, then the words a patient reads.

## Exercises in which something else moves the operated arm.

exercise-pendulum = Círculos de péndulo
    .counted = círculos hacia cada lado
    .purpose = Mueve el hombro mientras los músculos descansan.
    .start = Póngase de pie junto a una mesa, con una silla detrás. Apóyese en la mesa con la otra mano. Deje colgar el brazo operado.
    .step-1 = Inclínese hacia delante hasta que el brazo cuelgue libre, lejos del cuerpo.
    .step-2 = Mueva las caderas para que el brazo empiece a mecerse.
    .step-3 = Deje que la mano dibuje círculos pequeños, primero hacia un lado, luego hacia el otro.
    .step-4 = Deje que el brazo se pare. Empújese hacia arriba con la otra mano y quédese de pie sin moverse.
    .mistake-1 = Remover con el hombro. Deje que el cuerpo haga el trabajo.
    .mistake-2 = Círculos grandes. No deben pasar de un plato llano.
    .mistake-3 = Enderezarse cuando el brazo aún se mece.
    .stop = Pare si el dolor es agudo o si siente mareo.

exercise-table-slide = Deslizar sobre la mesa
    .reach = { handout-reach-corner }
    .purpose = Deja subir el brazo sin levantarlo.
    .start = Siéntese a una mesa. Apoye el antebrazo operado en una toalla, delante de usted.
    .step-1 = Deje que el brazo pese sobre la mesa.
    .step-2 = Incline el pecho hacia delante para que la toalla se aleje de usted.
    .step-3 = Llegue solo hasta donde indica «Final». Espere un momento.
    .step-4 = Enderécese otra vez y deje que el brazo vuelva.
    .mistake-1 = Empujar la mano con el hombro. Solo se mueve el cuerpo.
    .mistake-2 = Subir el hombro hacia la oreja.
    .stop = Pare si duele más que un tirón suave.

exercise-stick-elevation-scapular-plane = Subir el palo, un poco hacia el lado
    .purpose = Sube el brazo mientras el otro hace el trabajo.
    .start = Acuéstese boca arriba. Tome el palo con las dos manos, pulgares hacia arriba. El brazo operado queda un poco separado del cuerpo.
    .step-1 = Deje flojo el brazo operado.
    .step-2 = Empuje el palo hacia arriba con el otro brazo.
    .step-3 = Deje que el brazo operado suba con él, un poco hacia el lado.
    .step-4 = Pare donde indica «Final» y baje despacio.
    .mistake-1 = Ayudar con el brazo operado.
    .mistake-2 = Dejar caer el brazo al bajar.
    .stop = Pare si el brazo da tirones o si el dolor es agudo.

exercise-stick-elevation-forward = Subir el palo, recto hacia delante
    .purpose = Sube el brazo mientras el otro hace el trabajo.
    .start = Acuéstese boca arriba con las rodillas dobladas. Tome el palo con las dos manos sobre las caderas.
    .step-1 = Deje flojo el brazo operado.
    .step-2 = Empuje el palo hacia arriba con el otro brazo.
    .step-3 = Pare donde indica «Final» y espere un momento.
    .step-4 = Baje despacio. El otro brazo sigue guiando.
    .mistake-1 = Ayudar con el brazo operado.
    .mistake-2 = Arquear la espalda para llegar más lejos.
    .stop = Pare si el dolor es agudo o si sigue después de descansar.

exercise-supine-self-raise = Subir boca arriba, la otra mano lleva el brazo
    .purpose = Sube el brazo sin que trabaje lo reparado.
    .start = Acuéstese boca arriba, con una almohada bajo el codo operado. Tome esa muñeca con la otra mano.
    .step-1 = Deje que el brazo operado pese.
    .step-2 = Levántelo con la otra mano hacia el techo.
    .step-3 = Pare donde indica «Final» y suelte el aire.
    .step-4 = Llévelo de vuelta a la almohada.
    .mistake-1 = Levantar con el brazo operado.
    .mistake-2 = Soltarlo al bajar.
    .stop = Pare si no puede dejar flojo el brazo.

exercise-stick-external-rotation = Girar hacia fuera con el palo
    .reach = { handout-reach-lying-turn }
    .purpose = Ayuda a que el brazo pueda girar hacia fuera.
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo operado. Doble el codo para que la mano mire al techo. Tome el palo con las dos manos.
    .step-1 = Mantenga el codo operado sobre la toalla, cerca del cuerpo.
    .step-2 = Empuje el palo hacia el lado con el otro brazo.
    .step-3 = Deje que la mano operada caiga hacia fuera, como una puerta que se abre.
    .step-4 = Pare donde indica «Final» y vuelva.
    .mistake-1 = El codo se separa del cuerpo.
    .mistake-2 = Girar el brazo con su propia fuerza.
    .mistake-3 = Se dobla la muñeca y el brazo no gira.
    .stop = Pare si siente un tirón fuerte en la parte de delante del hombro.

exercise-doorway-external-rotation = Girar hacia fuera en el marco de una puerta
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = Gira el brazo hacia fuera sin usar el otro brazo.
    .start = Póngase de pie en una puerta, con el codo doblado y pegado al cuerpo. Apoye la palma en el marco.
    .step-1 = Deje la mano quieta en el marco.
    .step-2 = Gire todo el cuerpo despacio, alejándose de esa mano.
    .step-3 = Mueva los pies con pasos cortos mientras gira.
    .step-4 = Pare donde indica «Final» y gire de vuelta.
    .mistake-1 = Empujar el marco con la mano.
    .mistake-2 = El codo se separa del cuerpo.
    .stop = Pare si duele la parte de delante del hombro.

exercise-table-external-rotation = Girar hacia fuera en una mesa
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = Gira el brazo hacia fuera sin usar el otro brazo.
    .start = Siéntese con el lado operado junto a una mesa. Apoye en ella el antebrazo, con la mano hacia delante.
    .step-1 = Deje que el antebrazo pese y quede quieto.
    .step-2 = Gire el pecho despacio, alejándose de la mesa.
    .step-3 = Pare donde indica «Final» y respire.
    .step-4 = Gire de vuelta hacia delante.
    .mistake-1 = Apretar el brazo contra la mesa.
    .mistake-2 = Separar el codo del cuerpo.
    .stop = Pare si el hombro duele más que un tirón suave.

exercise-stick-internal-rotation = Girar hacia dentro con el palo
    .purpose = Ayuda a que el brazo pueda girar hacia dentro.
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo operado. La mano mira al techo. Tome el palo con las dos manos.
    .step-1 = Mantenga flojo el brazo operado.
    .step-2 = Tire del palo hacia el lado con el otro brazo.
    .step-3 = Deje que la mano operada baje hacia el vientre.
    .step-4 = Pare donde indica «Final» y vuelva arriba.
    .mistake-1 = Dejar caer la mano sola.
    .mistake-2 = El hombro se despega de la cama hacia delante.
    .stop = Pare si siente un pinchazo en el hombro.

exercise-therapist-elevation = Subir en manos de su terapeuta
    .purpose = Sube el brazo sin nada de trabajo.
    .start = Acuéstese boca arriba. Su terapeuta le sostiene el brazo por el codo y la muñeca.
    .step-1 = Deje que el brazo pese todo lo que pueda.
    .step-2 = Su terapeuta lo sube despacio.
    .step-3 = Avise en cuanto empiece a tirar.
    .mistake-1 = Ayudar a su terapeuta.
    .mistake-2 = Aguantar el aire.
    .stop = Diga «alto» cuando duela. Su terapeuta para al momento.

exercise-therapist-external-rotation = Girar hacia fuera en manos de su terapeuta
    .reach = { handout-reach-lying-turn }
    .purpose = Gira el brazo hacia fuera sin nada de trabajo.
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo. Su terapeuta le sostiene la muñeca.
    .step-1 = Deje que el brazo pese.
    .step-2 = Su terapeuta gira la mano hacia fuera despacio.
    .step-3 = Avise en cuanto empiece a tirar.
    .mistake-1 = Ayudar a su terapeuta.
    .mistake-2 = Levantar el codo de la toalla.
    .stop = Diga «alto» cuando duela. Su terapeuta para al momento.

exercise-therapist-internal-rotation = Girar hacia dentro en manos de su terapeuta
    .purpose = Gira el brazo hacia dentro sin nada de trabajo.
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo. Su terapeuta le sostiene la muñeca.
    .step-1 = Deje que el brazo pese.
    .step-2 = Su terapeuta baja la mano hacia el vientre.
    .step-3 = Avise en cuanto sienta un pinchazo.
    .mistake-1 = Ayudar a su terapeuta.
    .mistake-2 = Llevar el hombro hacia delante.
    .stop = Diga «alto» cuando duela. Su terapeuta para al momento.

exercise-pulley-elevation = Subir con la polea
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = Sube el brazo mientras el otro trabaja.
    .start = Siéntese bajo la polea, de espaldas a la puerta. Tome un mango con cada mano.
    .step-1 = Deje flojo el brazo operado.
    .step-2 = Tire hacia abajo con la otra mano.
    .step-3 = Deje que el brazo operado suba hasta donde indica «Final».
    .step-4 = Bájelo despacio.
    .mistake-1 = Levantar con el brazo operado.
    .mistake-2 = Subir el hombro hacia la oreja.
    .stop = Pare si se traba o si duele al bajar.

exercise-passive-cross-body = Brazo cruzado sobre el pecho, la otra mano lo lleva
    .purpose = Suelta la parte de atrás del hombro.
    .start = Acuéstese boca arriba. Tome el codo operado con la otra mano, el brazo hacia el techo.
    .step-1 = Deje flojo el brazo operado.
    .step-2 = Lleve el codo despacio al otro lado del pecho.
    .step-3 = Espere un momento y llévelo de vuelta.
    .mistake-1 = Tirar fuerte al final.
    .mistake-2 = Girar el cuerpo con el brazo.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

## Exercises in which the operated arm works and is helped.

exercise-supine-elevation = Subir boca arriba, con ayuda de la otra mano
    .purpose = El brazo operado empieza a ayudar.
    .start = Acuéstese boca arriba con las rodillas dobladas. Cruce los dedos de las dos manos sobre el vientre.
    .step-1 = Levante las dos manos juntas hacia el techo.
    .step-2 = Deje que el otro brazo haga casi todo el trabajo.
    .step-3 = Pare donde indica «Final».
    .step-4 = Baje las dos manos despacio hasta el vientre.
    .mistake-1 = Levantar solo con el brazo operado.
    .mistake-2 = Subir el hombro hacia la oreja.
    .stop = Pare si el brazo tiembla o si el dolor es agudo.

exercise-side-lying-elevation = Deslizar hacia arriba, de lado
    .purpose = El brazo sube mientras algo sostiene su peso.
    .start = Acuéstese sobre el otro lado. Ponga delante una tabla lisa sobre almohadas. Apoye en ella el brazo operado.
    .step-1 = Deje que la tabla sostenga el brazo.
    .step-2 = Deslice la mano despacio hacia la cabeza.
    .step-3 = Pare donde indica «Final».
    .step-4 = Deslícela de vuelta.
    .mistake-1 = Levantar el brazo de la tabla.
    .mistake-2 = Rodar hacia atrás.
    .stop = Pare si el hombro duele arriba.

exercise-washcloth-press = Empujar un paño hacia arriba
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = Enseña al brazo a empujar otra vez hacia arriba.
    .start = Acuéstese boca arriba. Tome un paño estirado entre las dos manos, sobre el pecho.
    .step-1 = Empuje las dos manos hacia el techo.
    .step-2 = Deje que guíe el otro brazo.
    .step-3 = Espere con los codos rectos y baje despacio.
    .mistake-1 = Tirar fuerte del paño.
    .mistake-2 = Dejar que guíe el brazo operado.
    .stop = Pare si el hombro se traba o duele.

exercise-stick-flexion-standing = Subir el palo de pie
    .purpose = Le da de pie la ayuda que tenía boca arriba.
    .start = Póngase de pie con la espalda recta. Tome el palo con las dos manos, delante de los muslos.
    .step-1 = Suba el palo con los dos brazos. Guía el otro brazo.
    .step-2 = Mantenga bajos los dos hombros.
    .step-3 = Pare donde indica «Final».
    .step-4 = Baje despacio.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Echarse hacia atrás.
    .stop = Pare si no puede subir el brazo sin que suba también el hombro.

exercise-stick-side-raise = Subir el palo hacia el lado
    .purpose = Lleva el brazo hacia el lado con ayuda.
    .start = Póngase de pie con la espalda recta. Tome el palo delante de usted, con una punta en cada palma.
    .step-1 = Empuje el palo hacia el lado operado.
    .step-2 = Deje que el brazo suba hacia el lado.
    .step-3 = Pare donde indica «Final» y vuelva.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Doblar el cuerpo hacia el lado.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-wall-slide = Deslizar por la pared
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = La pared ayuda a llevar el brazo hacia arriba.
    .start = Póngase frente a una pared. Apoye la mano operada en una toalla contra ella, con el codo doblado.
    .step-1 = Deslice la toalla por la pared hacia arriba.
    .step-2 = Acérquese con un paso cuando la mano sube.
    .step-3 = Pare donde indica «Final».
    .step-4 = Deslice hacia abajo despacio.
    .mistake-1 = Empujar fuerte contra la pared.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si el brazo se cae o si el dolor es agudo.

exercise-pulley-assisted = Subir con la polea, los dos brazos trabajan
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = El brazo operado trabaja con ayuda.
    .start = Siéntese bajo la polea. Tome un mango con cada mano, los codos un poco hacia fuera.
    .step-1 = Tire con la otra mano y suba a la vez con el brazo operado.
    .step-2 = Llegue hasta donde indica «Final».
    .step-3 = Baje despacio, todavía con un poco de trabajo.
    .mistake-1 = Dejar que la polea dé un tirón al brazo.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si se traba o si duele al bajar.

exercise-stick-external-rotation-assisted = Girar hacia fuera con el palo, los dos brazos trabajan
    .purpose = El brazo empieza a girar hacia fuera por sí mismo.
    .start = Siéntese con la espalda recta. Entre el codo y el cuerpo hay una toalla enrollada. Tome el palo con las dos manos.
    .step-1 = Gire la mano operada hacia fuera.
    .step-2 = Ayude con un empuje suave del palo.
    .step-3 = Pare donde indica «Final» y vuelva.
    .mistake-1 = Se cae la toalla.
    .mistake-2 = Doblar la muñeca.
    .stop = Pare si duele la parte de delante del hombro.

exercise-stick-extension = Empujar el palo hacia atrás
    .purpose = El brazo vuelve a moverse detrás del cuerpo.
    .start = Póngase de pie con la espalda recta. Tome el palo con las dos manos, detrás de las caderas.
    .step-1 = Separe el palo del cuerpo con suavidad.
    .step-2 = Mantenga el pecho levantado.
    .step-3 = Pare donde indica «Final» y vuelva.
    .mistake-1 = Inclinarse hacia delante.
    .mistake-2 = Redondear los hombros.
    .stop = Pare si duele la parte de delante del hombro.

exercise-towel-behind-back = Subir la toalla por la espalda
    .purpose = Ayuda a la mano a subir por la espalda.
    .start = Cuelgue una toalla sobre el otro hombro. Tome la punta de abajo por detrás con la mano operada.
    .step-1 = Tire suave de la punta de arriba con la otra mano.
    .step-2 = Deje que la mano operada suba por la espalda.
    .step-3 = Espere un momento y déjela bajar.
    .mistake-1 = Tirar con fuerza.
    .mistake-2 = Inclinarse hacia delante.
    .stop = Pare si siente un pinchazo en el hombro.

exercise-ball-roll-table = Rodar una pelota sobre la mesa
    .reach = Llegue solo hasta donde le mostraron ({ $degrees }°).
    .purpose = El brazo trabaja con su peso sobre una pelota.
    .start = Póngase de pie junto a una mesa. Apoye la mano operada en una pelota grande.
    .step-1 = Ruede la pelota lejos de usted.
    .step-2 = Inclínese a la vez con el cuerpo.
    .step-3 = Pare donde indica «Final» y ruede de vuelta.
    .mistake-1 = Poner el peso del cuerpo sobre la mano.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si el brazo resbala o duele.

## Exercises in which the operated arm moves itself.

exercise-supine-active-elevation = Subir boca arriba, el brazo solo
    .purpose = El brazo levanta su propio peso donde es más fácil.
    .start = Acuéstese boca arriba con las rodillas dobladas. El brazo junto al cuerpo, pulgar hacia arriba.
    .step-1 = Levante el brazo hacia el techo.
    .step-2 = Llegue hasta donde indica «Final».
    .step-3 = Bájelo despacio.
    .mistake-1 = Subir el hombro hacia la oreja.
    .mistake-2 = Dejar caer el brazo.
    .stop = Pare si el brazo tiembla o no se queda arriba.

exercise-forward-elevation = Subir recto hacia delante
    .purpose = Así vuelve a alcanzar cosas delante y arriba.
    .start = Póngase de pie con la espalda recta, el brazo colgando, el pulgar hacia delante.
    .step-1 = Mantenga bajo el hombro.
    .step-2 = Suba el brazo recto hacia delante.
    .step-3 = Llegue hasta donde indica «Final», mientras el brazo suba sin tirones.
    .step-4 = Bájelo despacio.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Echarse hacia atrás.
    .stop = Pare si no puede subir el brazo sin que suba también el hombro.

exercise-scapular-plane-elevation = Subir un poco hacia el lado
    .purpose = Así vuelve a alcanzar cosas altas, en la línea del omóplato.
    .start = Póngase de pie con la espalda cerca de una pared, el brazo colgando, pulgar hacia arriba.
    .step-1 = Suba el brazo a medio camino entre delante y el lado.
    .step-2 = Mantenga bajo el hombro.
    .step-3 = Llegue hasta donde indica «Final».
    .step-4 = Bájelo despacio.
    .mistake-1 = El pulgar gira hacia abajo.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo al subir o al bajar.

exercise-abduction = Subir hacia el lado
    .purpose = Así vuelve a alcanzar cosas a su lado.
    .start = Póngase de pie con la espalda recta, el brazo colgando, la palma hacia delante.
    .step-1 = Suba el brazo recto hacia el lado.
    .step-2 = Mantenga la palma hacia delante.
    .step-3 = Llegue hasta donde indica «Final».
    .step-4 = Bájelo despacio.
    .mistake-1 = La palma gira hacia el suelo.
    .mistake-2 = Doblar el cuerpo hacia el otro lado.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-side-lying-raise = Subir hacia el techo, de lado
    .purpose = Entrena a subir hacia el lado con el cuerpo quieto.
    .start = Acuéstese sobre el otro lado, el brazo operado a lo largo del cuerpo, pulgar hacia arriba.
    .step-1 = Levante el brazo hacia el techo.
    .step-2 = Pare donde indica «Final».
    .step-3 = Bájelo despacio.
    .mistake-1 = Rodar hacia atrás.
    .mistake-2 = Subir el hombro hacia la oreja.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-external-rotation = Girar hacia fuera
    .purpose = El brazo vuelve a girar hacia fuera.
    .start = Póngase de pie con la espalda recta. Entre el codo y el cuerpo hay una toalla enrollada. La mano mira hacia delante.
    .step-1 = Mantenga el codo sobre la toalla.
    .step-2 = Gire la mano hacia fuera.
    .step-3 = Espere un momento y vuelva.
    .mistake-1 = Se cae la toalla.
    .mistake-2 = El cuerpo gira con el brazo.
    .stop = Pare si duele la parte de delante del hombro.

exercise-internal-rotation = Girar hacia dentro
    .purpose = La mano vuelve a girar hacia el vientre.
    .start = Póngase de pie con la espalda recta, el codo doblado y pegado al cuerpo. La mano mira hacia delante.
    .step-1 = Mantenga el codo pegado al cuerpo.
    .step-2 = Lleve la mano al vientre.
    .step-3 = Vuelva hacia delante.
    .mistake-1 = El codo se va hacia delante.
    .mistake-2 = Apretar el vientre.
    .stop = Pare si duele la parte de delante del hombro.

exercise-side-lying-external-rotation = Girar hacia fuera, de lado
    .purpose = Entrena los músculos que giran el brazo hacia fuera.
    .start = Acuéstese sobre el otro lado, con una toalla enrollada entre el codo y el cuerpo. La mano descansa en el vientre.
    .step-1 = Mantenga el codo sobre la toalla.
    .step-2 = Levante la mano hacia el techo.
    .step-3 = Pare donde indica «Final» y bájela despacio.
    .mistake-1 = El codo deja la toalla.
    .mistake-2 = Rodar hacia atrás.
    .stop = Pare si el brazo tiembla o si duele dentro del hombro.

exercise-side-lying-wiper = Limpiaparabrisas, de lado
    .purpose = Une subir y girar en un solo movimiento.
    .start = Acuéstese sobre el otro lado, la mano operada en el vientre, el codo doblado.
    .step-1 = Levante la mano del vientre y gírela hacia fuera.
    .step-2 = Lleve el brazo doblado hacia arriba delante de usted, como un limpiaparabrisas.
    .step-3 = Llévelo de vuelta y baje la mano.
    .mistake-1 = Rodar hacia atrás.
    .mistake-2 = Ir rápido.
    .stop = Pare si el hombro se traba.

exercise-supine-inward-turn = Girar hacia dentro, boca arriba
    .purpose = Entrena el músculo de delante del hombro.
    .start = Acuéstese boca arriba, con una toalla enrollada bajo el codo. La mano mira al techo y un poco hacia fuera.
    .step-1 = Lleve la mano hacia el techo.
    .step-2 = Siga despacio hacia el vientre.
    .step-3 = Vuelva al comienzo.
    .mistake-1 = El hombro se va hacia delante.
    .mistake-2 = El codo deja la toalla.
    .stop = Pare si duele la parte de delante del hombro.

exercise-prone-inward-turn = Girar hacia dentro, boca abajo
    .purpose = Entrena a girar hacia dentro con el brazo hacia el lado.
    .start = Acuéstese boca abajo en el borde de la cama. La parte alta del brazo descansa hacia el lado, el antebrazo cuelga.
    .step-1 = Mantenga la parte alta del brazo sobre la cama.
    .step-2 = Lleve la mano hacia atrás, hacia los pies.
    .step-3 = Bájela despacio.
    .mistake-1 = Levantar el codo de la cama.
    .mistake-2 = El hombro cae hacia el suelo.
    .stop = Pare si siente un pinchazo en el hombro.

exercise-hand-behind-back-slide = Mano por la espalda
    .purpose = Así vuelve a meter la camisa y cerrar el sostén.
    .start = Póngase de pie con la espalda recta, la mano operada detrás de la cadera.
    .step-1 = Deslice el dorso de la mano hasta la columna.
    .step-2 = Deje que el pulgar suba poco a poco por la espalda.
    .step-3 = Pare con un tirón leve y deslice hacia abajo.
    .mistake-1 = Inclinarse hacia delante para llegar más alto.
    .mistake-2 = Empujar aunque duela.
    .stop = Pare si siente un pinchazo delante, en el hombro.

exercise-arm-across-chest = Brazo cruzado sobre el pecho
    .purpose = Así vuelve a alcanzar el otro hombro.
    .start = Siéntese con la espalda recta, el brazo levantado hacia delante si su hoja lo permite.
    .step-1 = Lleve el brazo al otro lado del pecho.
    .step-2 = Toque el otro hombro si puede.
    .step-3 = Vuelva hacia delante.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Girar el cuerpo con el brazo.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-hand-to-head = Mano detrás de la cabeza
    .purpose = Así vuelve a lavarse y peinarse el pelo.
    .start = Siéntese con la espalda recta, las manos en el regazo.
    .step-1 = Lleve la mano operada detrás de la cabeza.
    .step-2 = Deje que el codo se abra hacia el lado.
    .step-3 = Cierre el codo y baje la mano.
    .mistake-1 = Bajar la cabeza hacia la mano.
    .mistake-2 = Forzar el codo hacia atrás.
    .stop = Pare si siente que el hombro se va a salir.

exercise-trapezius-extension = Brazo recto hacia atrás
    .purpose = Entrena los músculos entre los omóplatos.
    .start = Póngase de pie con la espalda recta, el brazo colgando, la palma hacia atrás.
    .step-1 = Lleve el omóplato hacia atrás y abajo.
    .step-2 = Mueva el brazo recto un poco hacia atrás.
    .step-3 = Espere un momento y déjelo volver.
    .mistake-1 = Redondear los hombros hacia delante.
    .mistake-2 = Sacar el vientre.
    .stop = Pare si duele la parte de delante del hombro.

exercise-prone-arm-lift = Subir hacia atrás, boca abajo
    .purpose = Entrena la parte de atrás del hombro y el omóplato.
    .start = Acuéstese boca abajo en el borde de la cama, con el brazo operado colgando.
    .step-1 = Lleve el omóplato hacia la columna.
    .step-2 = Levante el brazo recto hasta el lado de la cadera.
    .step-3 = Bájelo despacio.
    .mistake-1 = Subir el hombro hacia la oreja.
    .mistake-2 = Balancear el brazo.
    .stop = Pare si duele el hombro o el cuello.

exercise-prone-raise-outward = Subir hacia fuera, boca abajo
    .purpose = Entrena el omóplato y la parte de atrás del hombro.
    .start = Acuéstese boca abajo, el brazo operado hacia el lado, pulgar hacia arriba.
    .step-1 = Lleve el omóplato hacia la columna.
    .step-2 = Levante un poco el brazo. Guía el pulgar.
    .step-3 = Bájelo despacio.
    .mistake-1 = El pulgar gira hacia abajo.
    .mistake-2 = Levantar la cabeza.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

## Effort without movement, the arm at the side.

exercise-isometric-external-rotation = Presionar hacia fuera
    .purpose = Despierta los músculos que giran el brazo hacia fuera.
    .start = Póngase de pie junto a una pared, el codo doblado y pegado al cuerpo. Entre la mano y la pared hay una toalla doblada.
    .step-1 = Presione suave el dorso de la mano contra la pared.
    .step-2 = No use más de un cuarto de su fuerza.
    .step-3 = Aguante, respire y suelte despacio.
    .mistake-1 = Presionar fuerte.
    .mistake-2 = El codo se separa del cuerpo.
    .stop = Pare si duele al presionar.

exercise-isometric-internal-rotation = Presionar hacia dentro
    .purpose = Despierta los músculos que giran el brazo hacia dentro.
    .start = Póngase de pie junto al marco de una puerta, el codo doblado y pegado al cuerpo. Apoye la palma en el marco.
    .step-1 = Presione suave la palma contra el marco.
    .step-2 = No use más de un cuarto de su fuerza.
    .step-3 = Aguante, respire y suelte despacio.
    .mistake-1 = Presionar fuerte.
    .mistake-2 = Apoyar el cuerpo en el marco.
    .stop = Pare si duele al presionar.

exercise-isometric-abduction = Presionar hacia el lado
    .purpose = Despierta los músculos que suben el brazo hacia el lado.
    .start = Póngase de pie con el lado operado cerca de una pared. Una almohada llena el hueco.
    .step-1 = Presione suave el codo contra la almohada.
    .step-2 = No use más de un cuarto de su fuerza.
    .step-3 = Aguante, respire y suelte despacio.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Apoyar el cuerpo en la pared.
    .stop = Pare si duele al presionar.

exercise-isometric-flexion = Presionar hacia delante
    .purpose = Despierta los músculos que suben el brazo hacia delante.
    .start = Póngase frente a una pared, el codo doblado y pegado al cuerpo. Entre el puño y la pared hay una toalla doblada.
    .step-1 = Presione suave el puño contra la pared.
    .step-2 = No use más de un cuarto de su fuerza.
    .step-3 = Aguante, respire y suelte despacio.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Apoyar el cuerpo en la pared.
    .stop = Pare si duele al presionar.

exercise-isometric-extension = Presionar hacia atrás
    .purpose = Despierta los músculos que llevan el brazo hacia atrás.
    .start = Póngase de espaldas a una pared, el codo pegado al cuerpo. Detrás del codo hay una toalla doblada.
    .step-1 = Presione suave el codo contra la pared.
    .step-2 = No use más de un cuarto de su fuerza.
    .step-3 = Aguante, respire y suelte despacio.
    .mistake-1 = Sacar las caderas hacia delante.
    .mistake-2 = Presionar fuerte.
    .stop = Pare si duele al presionar.

## Gentle pressure at the end of a movement.

exercise-cross-body-stretch = Estirar el brazo cruzado
    .purpose = Suelta la parte de atrás del hombro.
    .start = Póngase de pie con la espalda recta. Tome el codo operado con la otra mano, el brazo sobre el pecho.
    .step-1 = Lleve el codo suave hacia el otro hombro.
    .step-2 = Aguante y respire.
    .step-3 = Suelte despacio.
    .mistake-1 = Tirar aunque duela.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-towel-stretch-behind-back = Estirar con la toalla por la espalda
    .purpose = Suelta el hombro para que la mano suba por la espalda.
    .start = Cuelgue una toalla sobre el otro hombro. Tome la punta de abajo por detrás con la mano operada.
    .step-1 = Tire suave hacia arriba con la otra mano.
    .step-2 = Aguante con un tirón leve y respire.
    .step-3 = Deje bajar la toalla despacio.
    .mistake-1 = Dar tirones a la toalla.
    .mistake-2 = Inclinarse hacia delante.
    .stop = Pare si siente un pinchazo delante, en el hombro.

exercise-lying-inward-stretch = Estirar hacia dentro, boca arriba
    .purpose = Suelta el giro hacia dentro.
    .start = Acuéstese boca arriba, el brazo operado hacia el lado sobre una almohada. El codo doblado, la mano hacia el techo.
    .step-1 = Con la otra mano, presione suave esa mano hacia los pies.
    .step-2 = Aguante con un tirón leve y respire.
    .step-3 = Deje subir la mano despacio.
    .mistake-1 = El hombro se va hacia delante.
    .mistake-2 = Presionar fuerte.
    .stop = Pare si siente un pinchazo dentro del hombro.

exercise-doorway-outward-stretch = Estirar hacia fuera en el marco de una puerta
    .purpose = Suelta el giro hacia fuera.
    .start = Póngase de pie en una puerta. El codo está doblado y pegado al cuerpo, la palma en el marco.
    .step-1 = Gire el cuerpo hacia el otro lado hasta sentir un tirón leve.
    .step-2 = Aguante y respire.
    .step-3 = Gire de vuelta despacio.
    .mistake-1 = El codo se separa del cuerpo.
    .mistake-2 = Arquear la espalda.
    .stop = Pare si siente un dolor agudo en la parte de delante del hombro.

exercise-doorway-chest-stretch = Estirar el pecho en el marco de una puerta
    .purpose = Suelta el brazo para subirlo y llevarlo atrás.
    .start = Póngase de pie en una puerta. Apoye el antebrazo en el marco, el codo a la altura del hombro.
    .step-1 = Dé un paso hacia delante hasta sentir un tirón leve en el pecho.
    .step-2 = Aguante y respire.
    .step-3 = Dé un paso atrás despacio.
    .mistake-1 = Apoyarse con su peso.
    .mistake-2 = Arquear la espalda.
    .stop = Pare si siente que el hombro se va a salir.

exercise-overhead-lean-stretch = Estirar por encima de la cabeza en una silla
    .purpose = Suelta el hombro para subir el brazo.
    .start = Arrodíllese delante de una silla. Apoye los dos antebrazos en el asiento.
    .step-1 = Baje el pecho hacia el suelo.
    .step-2 = Aguante con un tirón leve y respire.
    .step-3 = Suba despacio.
    .mistake-1 = Bajar de golpe.
    .mistake-2 = Empujar con el brazo operado para subir.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-lying-overhead-stretch = Estirar por encima de la cabeza, boca arriba
    .purpose = Suelta el hombro para subir el brazo, con la espalda en reposo.
    .start = Acuéstese boca arriba con las rodillas dobladas. Tome la muñeca operada con la otra mano.
    .step-1 = Lleve el brazo por encima de la cabeza.
    .step-2 = Presiónelo suave hacia el suelo.
    .step-3 = Aguante, respire y llévelo de vuelta.
    .mistake-1 = Arquear la espalda.
    .mistake-2 = Dar rebotes.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

## Exercises against a band, a weight, or the weight of the body.

exercise-band-external-rotation = Girar hacia fuera con la banda
    .purpose = Da fuerza a los músculos que giran hacia fuera.
    .start = Ate la banda a la altura del codo, en el otro lado. Entre el codo y el cuerpo hay una toalla enrollada.
    .step-1 = Empiece con la mano cerca del vientre.
    .step-2 = Gire la mano hacia fuera contra la banda.
    .step-3 = Vuelva despacio.
    .mistake-1 = Se cae la toalla.
    .mistake-2 = La banda tira de usted de golpe.
    .stop = Pare si el hombro duele durante el ejercicio o mucho rato después.

exercise-band-internal-rotation = Girar hacia dentro con la banda
    .purpose = Da fuerza a los músculos que giran hacia dentro.
    .start = Ate la banda a la altura del codo, en el lado operado. Mantenga el codo pegado al cuerpo.
    .step-1 = Empiece con la mano un poco hacia fuera.
    .step-2 = Lleve la mano hacia el vientre.
    .step-3 = Vuelva despacio.
    .mistake-1 = El codo se va hacia atrás.
    .mistake-2 = El cuerpo gira con el brazo.
    .stop = Pare si duele la parte de delante del hombro.

exercise-row = Remo
    .purpose = Da fuerza a la parte de atrás del hombro y al omóplato.
    .start = Ate la banda delante de usted, a la altura de la cintura. Tome las dos puntas con la mano operada.
    .step-1 = Lleve el omóplato hacia la columna.
    .step-2 = Lleve el codo hacia atrás a lo largo del cuerpo.
    .step-3 = Vuelva despacio hasta que el brazo esté casi recto.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Pasar mucho por detrás del cuerpo.
    .stop = Pare si duele la parte de delante del hombro.

exercise-band-pull-down = Bajar la banda con el brazo recto
    .purpose = Da fuerza a los músculos que bajan el brazo.
    .start = Ate la banda delante de usted, a la altura del hombro. Tome las dos puntas con el brazo operado recto.
    .step-1 = Baje la mano hasta la cadera.
    .step-2 = Mantenga recto el codo.
    .step-3 = Vuelva arriba despacio.
    .mistake-1 = Echarse hacia atrás.
    .mistake-2 = Redondear los hombros.
    .stop = Pare si siente un pinchazo al subir.

exercise-band-forward-punch = Empujar la banda hacia delante
    .purpose = Da fuerza al músculo que sujeta el omóplato.
    .start = Ate la banda detrás de usted, a la altura de la cintura. Tome una punta junto a las costillas.
    .step-1 = Empuje el puño despacio hacia delante y un poco hacia arriba.
    .step-2 = Al final, llegue un poco más lejos.
    .step-3 = Vuelva despacio.
    .mistake-1 = El hombro sube hacia la oreja.
    .mistake-2 = Girar el cuerpo.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-diagonal-band = Tirar de la banda en diagonal
    .purpose = Une subir y girar contra una banda.
    .start = Ate la banda abajo, en el otro lado. Empiece con la mano en la otra cadera.
    .step-1 = Tire hacia arriba y hacia fuera, como si sacara una espada.
    .step-2 = Termine con el pulgar hacia atrás.
    .step-3 = Vuelva despacio por la misma línea.
    .mistake-1 = Empezar de un tirón.
    .mistake-2 = Arquear la espalda.
    .stop = Pare si siente que el hombro se va a salir.

exercise-band-external-rotation-raised = Girar hacia fuera con la banda, codo levantado
    .purpose = Prepara el hombro para lanzar y sacar.
    .start = Ate la banda delante de usted, a la altura del pecho. Suba el codo a la altura del hombro, la mano hacia delante.
    .step-1 = Gire la mano hacia arriba y atrás.
    .step-2 = Mantenga el codo donde está.
    .step-3 = Vuelva despacio.
    .mistake-1 = El codo se cae.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo dentro del hombro.

exercise-band-internal-rotation-raised = Girar hacia dentro con la banda, codo levantado
    .purpose = Prepara la parte de delante del hombro para el deporte.
    .start = Ate la banda detrás de usted, a la altura del pecho. Suba el codo a la altura del hombro, la mano hacia arriba.
    .step-1 = Gire la mano hacia delante y abajo.
    .step-2 = Mantenga el codo donde está.
    .step-3 = Vuelva despacio.
    .mistake-1 = El codo se cae.
    .mistake-2 = Ir rápido.
    .stop = Pare si duele la parte de delante del hombro.

exercise-side-lying-external-rotation-weight = Girar hacia fuera con una pesa, de lado
    .purpose = Da fuerza a los músculos que giran hacia fuera.
    .start = Acuéstese sobre el otro lado, con una toalla enrollada entre el codo y el cuerpo. Tome una pesa ligera.
    .step-1 = Levante la mano hacia el techo.
    .step-2 = Espere un momento.
    .step-3 = Bájela despacio.
    .mistake-1 = El codo deja la toalla.
    .mistake-2 = Una pesa que le hace tomar impulso.
    .stop = Pare si el brazo tiembla o duele.

exercise-full-can = Subir con una pesa, pulgar hacia arriba
    .purpose = Da fuerza al músculo reparado.
    .start = Póngase de pie con la espalda recta y una pesa ligera. El brazo cuelga, el pulgar hacia arriba.
    .step-1 = Suba el brazo a medio camino entre delante y el lado.
    .step-2 = Pare a la altura del hombro.
    .step-3 = Bájelo despacio.
    .mistake-1 = El pulgar gira hacia abajo.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo o si el hombro tiene que subir hacia la oreja.

exercise-forward-raise-weight = Subir hacia delante con una pesa
    .purpose = Da fuerza para levantar hacia delante.
    .start = Póngase de pie con la espalda recta y una pesa ligera. El brazo cuelga, el pulgar hacia delante.
    .step-1 = Suba el brazo recto hacia delante hasta la altura del hombro.
    .step-2 = Espere un momento.
    .step-3 = Bájelo despacio.
    .mistake-1 = Tomar impulso.
    .mistake-2 = Echarse hacia atrás.
    .stop = Pare si el hombro tiene que subir hacia la oreja.

exercise-side-raise-weight = Subir hacia el lado con una pesa
    .purpose = Da fuerza para levantar hacia el lado.
    .start = Póngase de pie con la espalda recta y una pesa ligera. El brazo cuelga, la palma hacia delante.
    .step-1 = Suba el brazo hacia el lado hasta la altura del hombro.
    .step-2 = Espere un momento.
    .step-3 = Bájelo despacio.
    .mistake-1 = La palma gira hacia abajo.
    .mistake-2 = Doblar el cuerpo hacia el lado.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-prone-raise-outward-weight = Subir hacia fuera con una pesa, boca abajo
    .purpose = Da fuerza a la parte de atrás del hombro y al omóplato.
    .start = Acuéstese boca abajo en el borde de la cama. El brazo cuelga con una pesa ligera.
    .step-1 = Gire el pulgar hacia arriba.
    .step-2 = Suba el brazo hacia el lado.
    .step-3 = Bájelo despacio.
    .mistake-1 = Subir más alto que el cuerpo.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo en la parte de arriba del hombro.

exercise-bent-forward-row = Remo inclinado
    .purpose = Da fuerza a la parte de atrás del hombro.
    .start = Apóyese en una silla con la otra mano. El brazo operado cuelga con una pesa.
    .step-1 = Lleve el omóplato hacia atrás.
    .step-2 = Suba el codo a lo largo del cuerpo.
    .step-3 = Bájelo despacio.
    .mistake-1 = Torcer el cuerpo.
    .mistake-2 = Redondear la espalda.
    .stop = Pare si duele la parte de delante del hombro.

exercise-biceps-curl = Doblar el codo con una pesa
    .purpose = Da fuerza para levantar con el brazo.
    .start = Póngase de pie con la espalda recta y una pesa. El brazo cuelga, la palma hacia delante.
    .step-1 = Doble el codo y levante la pesa.
    .step-2 = Mantenga quieta la parte alta del brazo.
    .step-3 = Bájela despacio.
    .mistake-1 = Balancear el cuerpo.
    .mistake-2 = El codo se va hacia delante.
    .stop = Pare si duele delante, en el hombro o en la parte alta del brazo.

exercise-band-elbow-straighten = Estirar el codo con una banda
    .purpose = Da fuerza a la parte de atrás del brazo.
    .start = Fije la banda arriba, en una puerta cerrada. Tómela con el codo operado doblado y pegado al cuerpo.
    .step-1 = Estire el codo y empuje hacia abajo.
    .step-2 = Mantenga quieta la parte alta del brazo.
    .step-3 = Vuelva despacio.
    .mistake-1 = Apoyarse en la banda.
    .mistake-2 = El codo se va hacia delante.
    .stop = Pare si duele el codo o el hombro.

exercise-wall-push-up = Flexiones en la pared
    .purpose = Así vuelve a empujar, con poco peso.
    .start = Póngase frente a una pared, a un brazo de distancia. Apoye las dos palmas a la altura del pecho.
    .step-1 = Doble los codos y acerque el pecho a la pared.
    .step-2 = Empuje despacio para volver.
    .step-3 = Al final, empuje un poco más.
    .mistake-1 = Los hombros suben hacia las orejas.
    .mistake-2 = Los codos muy abiertos.
    .stop = Pare si el hombro duele al empujar.

exercise-hands-and-knees-lean = Apoyarse en manos y rodillas
    .purpose = El hombro aprende a llevar peso.
    .start = Póngase en manos y rodillas, las manos bajo los hombros.
    .step-1 = Pase un poco de peso al brazo operado.
    .step-2 = Mantenga el omóplato plano sobre las costillas.
    .step-3 = Aguante, respire y vuelva.
    .mistake-1 = Hundirse entre los omóplatos.
    .mistake-2 = Trabar el codo.
    .stop = Pare si el hombro duele o cede.

exercise-kneeling-push-up = Flexiones de rodillas
    .purpose = Da más fuerza para empujar.
    .start = Arrodíllese con las dos manos en el suelo bajo los hombros, el cuerpo recto.
    .step-1 = Doble los codos y baje el pecho.
    .step-2 = Empuje hacia arriba despacio.
    .mistake-1 = Los codos muy abiertos.
    .mistake-2 = Hundir la cintura.
    .stop = Pare si el hombro duele abajo.

exercise-push-up-plus = Flexiones con un empuje más
    .purpose = Da fuerza al músculo que sujeta el omóplato.
    .start = Arrodíllese con los brazos rectos, las manos bajo los hombros.
    .step-1 = Mantenga rectos los codos.
    .step-2 = Empuje el suelo y redondee la parte alta de la espalda.
    .step-3 = Baje despacio entre los omóplatos.
    .mistake-1 = Doblar los codos.
    .mistake-2 = Mover solo la cabeza.
    .stop = Pare si duele el hombro.

exercise-push-up = Flexiones
    .purpose = Prepara el brazo para el trabajo duro y el deporte.
    .start = Acuéstese boca abajo, las manos junto al pecho, las puntas de los pies en el suelo.
    .step-1 = Empuje hacia arriba con el cuerpo recto.
    .step-2 = Baje despacio.
    .mistake-1 = Los codos muy abiertos.
    .mistake-2 = Bajar el pecho más que los codos.
    .stop = Pare si el hombro duele durante el ejercicio o mucho rato después.

exercise-plank = Plancha sobre los antebrazos
    .purpose = Entrena a la vez el hombro y el tronco.
    .start = Acuéstese boca abajo, los antebrazos sobre una toalla bajo los hombros.
    .step-1 = Levante el cuerpo en línea recta.
    .step-2 = Empuje el suelo con los antebrazos.
    .step-3 = Aguante y siga respirando.
    .mistake-1 = Hundirse entre los omóplatos.
    .mistake-2 = Aguantar el aire.
    .stop = Pare si el hombro duele o tiembla.

exercise-overhead-press = Empujar hacia arriba, peso ligero
    .purpose = Así vuelve a poner cosas en un estante alto.
    .start = Póngase de pie con la espalda recta. Tome una pesa ligera a la altura del hombro, el pulgar hacia atrás.
    .step-1 = Empuje la pesa hacia arriba y un poco hacia delante.
    .step-2 = Estire el codo.
    .step-3 = Bájela despacio.
    .mistake-1 = Echarse hacia atrás.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si siente un pinchazo arriba.

exercise-carry-walk = Caminar con una bolsa
    .purpose = Prepara el brazo para las cargas de cada día.
    .start = Póngase de pie con la espalda recta y la bolsa colgando de la mano operada.
    .step-1 = Coloque el omóplato.
    .step-2 = Camine despacio con el cuerpo recto.
    .step-3 = Deje la bolsa con cuidado.
    .mistake-1 = La bolsa tira del hombro hacia abajo.
    .mistake-2 = Inclinarse hacia un lado.
    .stop = Pare si duele el hombro o si la mano cede.

## Elbow, forearm, wrist and hand.

exercise-elbow-flexion = Doblar el codo
    .purpose = Evita que el codo se ponga rígido.
    .start = Quítese el cabestrillo. Póngase de pie, el brazo colgando cerca del cuerpo, sin nada en la mano.
    .step-1 = Doble el codo y suba la mano.
    .step-2 = Deje bajar la mano despacio. No empuje el codo para estirarlo.
    .step-3 = Mantenga quieta la parte alta del brazo, pegada al cuerpo.
    .mistake-1 = Levantar todo el brazo.
    .mistake-2 = Tener algo en la mano.
    .stop = Pare si siente un dolor agudo delante, en la parte alta del brazo.

exercise-elbow-flexion-assisted = Doblar el codo con ayuda
    .purpose = El músculo del codo empieza a trabajar.
    .start = Siéntese con el brazo operado cerca del cuerpo. Tome esa muñeca con la otra mano.
    .step-1 = Doble el codo mientras la otra mano ayuda.
    .step-2 = Estírelo despacio, también con ayuda.
    .mistake-1 = Separar el codo del cuerpo.
    .mistake-2 = Estirarlo del todo a la fuerza.
    .stop = Pare si siente un dolor agudo delante, en la parte alta del brazo.

exercise-elbow-flexion-passive = Doblar el codo, la otra mano lo lleva
    .purpose = Mueve el codo mientras sana su tendón.
    .start = Acuéstese boca arriba, con una almohada bajo la parte alta del brazo. Tome la muñeca operada con la otra mano.
    .step-1 = Deje flojo el brazo operado.
    .step-2 = Doble el codo con la otra mano.
    .step-3 = Baje otra vez la mano. Pare antes de que esté recto del todo.
    .mistake-1 = Ayudar con el brazo operado.
    .mistake-2 = Apretar para estirarlo.
    .stop = Pare si siente un tirón delante, en la parte alta del brazo.

exercise-elbow-extension = Estirar el codo
    .purpose = El codo vuelve a quedar recto.
    .start = Acuéstese boca arriba, el brazo operado junto al cuerpo, el codo doblado, la mano hacia arriba.
    .step-1 = Baje la mano despacio hacia la cama.
    .step-2 = Deje que el codo se abra hasta donde quiera.
    .step-3 = Dóblelo otra vez, igual de despacio.
    .mistake-1 = Dejar caer la mano.
    .mistake-2 = Levantar la parte alta del brazo.
    .stop = Pare si duele el pliegue del codo.

exercise-forearm-turn = Palma arriba, palma abajo
    .purpose = Ayuda a que el antebrazo pueda girar.
    .start = Siéntese con el codo doblado y pegado al cuerpo, el antebrazo sobre una almohada.
    .step-1 = Gire la palma hacia el techo.
    .step-2 = Gírela hacia el suelo.
    .step-3 = Mantenga el codo pegado al cuerpo.
    .mistake-1 = Mover el codo hacia fuera.
    .stop = Pare si duele el codo o la parte alta del brazo.

exercise-forearm-turn-passive = Palma arriba, palma abajo, la otra mano la lleva
    .purpose = Mueve el antebrazo mientras sana el tendón.
    .start = Siéntese con el codo doblado y pegado al cuerpo, el antebrazo sobre una almohada. Tome la muñeca con la otra mano.
    .step-1 = Deje floja la mano operada.
    .step-2 = Gire la palma hacia arriba con la otra mano.
    .step-3 = Gírela otra vez hacia abajo.
    .mistake-1 = Ayudar con la mano operada.
    .mistake-2 = Apretar con la mano operada.
    .stop = Pare si duele el codo o la parte alta del brazo.

exercise-wrist-circles = Doblar la muñeca y hacer círculos
    .purpose = Mueve la muñeca y baja la hinchazón.
    .start = No se quite el cabestrillo. La mano sale apenas de él.
    .step-1 = Doble la muñeca hacia arriba, luego hacia abajo.
    .step-2 = Dibuje círculos lentos con la mano.
    .step-3 = Haga círculos también hacia el otro lado.
    .mistake-1 = Mover a la vez el codo o el hombro.
    .stop = Pare si la mano se duerme, se enfría o se pone blanca. Llame a la consulta de su cirujano.

exercise-hand-open-close = Abrir y cerrar la mano
    .purpose = Mueve los dedos y baja la hinchazón.
    .start = No se quite el cabestrillo. Deje libres los dedos.
    .step-1 = Cierre la mano en un puño flojo.
    .step-2 = Abra bien la mano y separe los dedos.
    .step-3 = Toque cada dedo con el pulgar.
    .mistake-1 = Apretar fuerte.
    .stop = Pare si la mano se duerme, se enfría o se pone blanca. Llame a la consulta de su cirujano.

exercise-ball-squeeze = Apretar una pelota blanda
    .purpose = Mantiene la fuerza de la mano y del antebrazo.
    .start = No se quite el cabestrillo. Tome una pelota blanda con la mano operada.
    .step-1 = Apriete la pelota suave.
    .step-2 = Aguante y luego suelte del todo.
    .mistake-1 = Poner tenso el hombro.
    .mistake-2 = Usar una pelota dura.
    .stop = Pare si duele el codo o el hombro al apretar.

exercise-elbow-hand-resistance = Doblar el codo contra la otra mano
    .purpose = Empieza a cargar el músculo del codo.
    .start = Siéntese con el codo operado doblado y pegado al cuerpo. Ponga la otra mano sobre esa muñeca.
    .step-1 = Doble el codo hacia arriba.
    .step-2 = Empuje leve en contra con la otra mano.
    .step-3 = Deje que la mano se mueva, despacio, arriba y abajo.
    .mistake-1 = Empujar fuerte.
    .mistake-2 = El codo se separa del cuerpo.
    .stop = Pare si duele delante, en la parte alta del brazo.

exercise-elbow-straighten-hand-resistance = Estirar el codo contra la otra mano
    .purpose = Empieza a cargar la parte de atrás del brazo.
    .start = Siéntese con el codo operado doblado sobre una mesa. La otra mano sujeta esa muñeca desde abajo.
    .step-1 = Estire el codo.
    .step-2 = Frene leve con la otra mano.
    .step-3 = Deje que la mano se mueva despacio.
    .mistake-1 = Empujar fuerte.
    .mistake-2 = Apoyarse en el codo.
    .stop = Pare si duele el codo o el hombro.

exercise-forearm-hand-resistance = Girar la palma contra la otra mano
    .purpose = Empieza a cargar los músculos que giran la palma.
    .start = Siéntese con el antebrazo operado sobre una almohada. Sujete esa mano con la otra.
    .step-1 = Gire la palma hacia arriba mientras la otra mano frena leve.
    .step-2 = Gírela hacia abajo mientras la otra mano frena leve.
    .mistake-1 = Apretar fuerte.
    .mistake-2 = Mover el codo hacia los lados.
    .stop = Pare si duele delante, en la parte alta del brazo.

## The shoulder blade, the arm supported.

exercise-shrug = Encoger los hombros
    .purpose = Mantiene sueltos el omóplato y el cuello.
    .start = Póngase de pie con la espalda recta. El brazo está en el cabestrillo o apoyado en el vientre.
    .step-1 = Suba el hombro suave hacia la oreja. Puede subir los dos.
    .step-2 = Espere un momento.
    .step-3 = Déjelo bajar del todo.
    .mistake-1 = Levantar con el brazo.
    .mistake-2 = Sacar la cabeza hacia delante.
    .stop = Pare si duele el hombro mismo.

exercise-shoulder-roll = Círculos de hombro
    .purpose = Ayuda al omóplato a deslizarse sobre las costillas.
    .start = Póngase de pie con la espalda recta. El brazo está en el cabestrillo o apoyado en el vientre.
    .step-1 = Dibuje un círculo lento con el hombro: arriba, atrás, abajo.
    .step-2 = Haga pequeño el círculo.
    .step-3 = Deje quieto el brazo en el cabestrillo.
    .mistake-1 = Girar hacia delante y encorvarse.
    .mistake-2 = Mover el codo hacia atrás.
    .stop = Pare si duele el hombro mismo.

exercise-blade-placing = Colocar el omóplato
    .purpose = Enseña al omóplato dónde descansar.
    .start = Siéntese con la espalda recta, el antebrazo sobre una almohada. Si lleva cabestrillo, déjeselo puesto.
    .step-1 = Piense en la punta de abajo del omóplato, el hueso plano de la espalda.
    .step-2 = Deje que se deslice un poco hacia atrás y abajo.
    .step-3 = Aguante suave y siga respirando.
    .mistake-1 = Tirar fuerte.
    .mistake-2 = Levantar el pecho.
    .stop = Pare si duele el hombro mismo.

exercise-blade-squeeze = Llevar el omóplato hacia atrás
    .purpose = Entrena los músculos entre los omóplatos.
    .start = Siéntese con la espalda recta, el brazo en el cabestrillo, con una almohada debajo.
    .step-1 = Lleve el omóplato suave hacia la columna.
    .step-2 = Mantenga el codo donde está.
    .step-3 = Aguante, respire y suelte.
    .mistake-1 = El codo se va hacia atrás.
    .mistake-2 = Subir los hombros hacia las orejas.
    .stop = Pare si duele la parte de delante del hombro.

exercise-blade-down = Omóplato abajo
    .purpose = Quita tensión al cuello.
    .start = Póngase de pie con la espalda recta, el brazo en el cabestrillo.
    .step-1 = Deje que el hombro baje y se aleje de la oreja.
    .step-2 = Estire la cabeza hacia arriba.
    .step-3 = Aguante suave y suelte.
    .mistake-1 = Inclinarse hacia un lado.
    .mistake-2 = Empujar fuerte el brazo hacia abajo.
    .stop = Pare si duele el hombro mismo.

exercise-blade-forward = Omóplato hacia delante, boca arriba
    .purpose = Despierta el músculo que sujeta el omóplato a las costillas.
    .start = Acuéstese boca arriba, con una almohada bajo la parte alta del brazo. Si lleva cabestrillo, déjeselo puesto.
    .step-1 = Deje que todo el hombro se levante un poco de la cama.
    .step-2 = El brazo sigue quieto en el cabestrillo.
    .step-3 = Déjelo bajar otra vez.
    .mistake-1 = Levantar el codo.
    .mistake-2 = Aguantar el aire.
    .stop = Pare si duele la parte de delante del hombro.

## Drills before sport.

exercise-underhand-toss = Lanzar por abajo
    .purpose = Empieza a mover rápido por debajo del hombro.
    .start = Póngase de pie a unos pasos de una pared, con una pelota blanda.
    .step-1 = Lleve el brazo un poco hacia atrás.
    .step-2 = Lance la pelota por abajo contra la pared.
    .step-3 = Atrápela con las dos manos.
    .mistake-1 = Lanzar fuerte.
    .mistake-2 = Llevar el brazo muy atrás.
    .stop = Pare si el hombro duele o se siente flojo.

exercise-chest-pass = Pase desde el pecho a una pared
    .purpose = Empieza a empujar rápido con los dos brazos.
    .start = Póngase frente a una pared, la pelota ante el pecho en las dos manos.
    .step-1 = Empuje la pelota hacia la pared.
    .step-2 = Atrápela suave con los codos doblados.
    .mistake-1 = Atrapar con los brazos rígidos.
    .mistake-2 = Los hombros suben hacia las orejas.
    .stop = Pare si el hombro duele al atrapar.

exercise-wall-dribble = Toques de pelota en la pared
    .purpose = Entrena un trabajo corto y rápido por encima del hombro.
    .start = Póngase frente a una pared. Tenga una pelota en la mano operada, por encima de la cabeza.
    .step-1 = Dé toques cortos y rápidos con la pelota en la pared.
    .step-2 = Mantenga quieto el omóplato en su sitio.
    .mistake-1 = Dejar caer el codo.
    .mistake-2 = Echarse hacia atrás.
    .stop = Pare si el brazo se cansa tanto que el hombro sube hacia la oreja.

exercise-overhead-throw-two-hands = Lanzar con las dos manos desde arriba
    .purpose = Empieza a lanzar con ayuda del otro brazo.
    .start = Póngase de pie con un pie delante, la pelota sobre la cabeza en las dos manos.
    .step-1 = Lance la pelota suave hacia una pared.
    .step-2 = Deje que guíe el cuerpo y sigan los brazos.
    .step-3 = Deje que bote antes de atraparla.
    .mistake-1 = Lanzar solo con los brazos.
    .mistake-2 = Arquear la espalda.
    .stop = Pare si el hombro duele detrás o arriba.

exercise-ball-throw-drill = Lanzar suave por arriba
    .purpose = Así vuelve a lanzar, despacio.
    .start = Póngase de lado a una pared, con una pelota blanda en la mano operada.
    .step-1 = Suba el codo a la altura del hombro.
    .step-2 = Dé un paso y lance a la mitad de su velocidad.
    .step-3 = Deje que el brazo siga hacia abajo y hacia el otro lado.
    .mistake-1 = Lanzar fuerte.
    .mistake-2 = Frenar el brazo de golpe.
    .stop = Pare si el hombro duele o se siente flojo.

exercise-quick-band-rotation = Giros rápidos con la banda
    .purpose = Prepara el hombro para ir rápido.
    .start = Ate la banda a la altura del codo. Entre el codo y el cuerpo hay una toalla enrollada.
    .step-1 = Gire hacia fuera rápido.
    .step-2 = Vuelva despacio.
    .step-3 = Mantenga la toalla en su sitio.
    .mistake-1 = Se cae la toalla.
    .mistake-2 = Mover todo el cuerpo.
    .stop = Pare si no puede frenar la vuelta.

exercise-wall-push-off = Rebotar en la pared
    .purpose = Prepara el brazo para cargas de golpe.
    .start = Póngase frente a una pared, a un brazo de distancia. Las palmas están a la altura del pecho.
    .step-1 = Déjese caer leve contra la pared.
    .step-2 = Empuje para que las manos se despeguen.
    .step-3 = Caiga suave con los codos doblados.
    .mistake-1 = Caer con los brazos rígidos.
    .mistake-2 = Los hombros suben hacia las orejas.
    .stop = Pare si el hombro duele al caer.

exercise-swim-stroke-on-land = Brazada en tierra
    .purpose = Prepara el brazo para el agua.
    .start = Inclínese hacia delante desde las caderas. Tome la banda, atada delante de usted.
    .step-1 = Estire el brazo hacia delante y tire hasta pasar la cadera.
    .step-2 = Vuelva despacio.
    .step-3 = Mantenga quieto el omóplato en su sitio.
    .mistake-1 = Cruzar la línea central del cuerpo.
    .mistake-2 = Tirar con la muñeca doblada.
    .stop = Pare si siente un pinchazo al estirar hacia delante.

exercise-shadow-swing = Golpe lento de práctica
    .purpose = Así vuelve el golpe de su deporte, sin pelota.
    .start = Póngase como en su deporte, la raqueta o el palo en una o dos manos.
    .step-1 = Haga despacio todo el movimiento.
    .step-2 = Pare suave al final.
    .step-3 = Vaya más rápido solo si sigue siendo fácil.
    .mistake-1 = Empezar a toda velocidad.
    .mistake-2 = Frenar de golpe.
    .stop = Pare si el hombro duele al comienzo o al final del golpe.

exercise-serve-practice = Golpe por arriba a media velocidad
    .purpose = El último paso antes del deporte por encima de la cabeza.
    .start = Póngase como para sacar o lanzar, con sus propias cosas.
    .step-1 = Haga todo el golpe a media velocidad.
    .step-2 = Descanse entre golpes.
    .step-3 = Vaya más rápido solo en un día sin dolor.
    .mistake-1 = Demasiados golpes el primer día.
    .mistake-2 = El hombro sube hacia la oreja.
    .stop = Pare si el hombro duele a la mañana siguiente. Haga menos.
